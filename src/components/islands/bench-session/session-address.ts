/** Whether an address is about a session. */
export const isSessionLink = (fragment: Readonly<Record<string, string>>): boolean =>
  ['g', 'n', 'r', 'v'].some((key) => key in fragment);

/** Asks for modules by their addresses, all at once; they are kept until they are imported. */
export function askForParts(addresses: readonly string[]): void {
  for (const href of addresses)
    document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', href }));
}

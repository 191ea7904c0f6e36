/**
 * Puts text on the clipboard; false where the browser has none for this page (it is missing over plain http on
 * another machine's address) or refuses.
 */
export async function copyText(text: string): Promise<boolean> {
  try {
    // Typed as always there, and missing outside a secure context.
    const clipboard = navigator.clipboard as Clipboard | undefined;
    if (clipboard === undefined) return false;
    await clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

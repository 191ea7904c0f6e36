export type TextFileFault =
  | { readonly kind: 'too-large' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-text' }
  | { readonly kind: 'unreadable' };

/**
 * The text of a file that someone chose, if it is UTF-8 and no larger than `largestBytes`: a larger one is refused by its
 * size, before anything is read. A byte order mark is left out. Never rejects.
 */
export const readTextFile = async (
  file: Blob,
  largestBytes: number,
): Promise<
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: TextFileFault }
> => {
  if (file.size > largestBytes) return { ok: false, fault: { kind: 'too-large' } };
  if (file.size === 0) return { ok: false, fault: { kind: 'empty' } };
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return { ok: false, fault: { kind: 'unreadable' } }; // moved, changed or taken away since it was chosen
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    // Letters of UTF-16 are pairs with a zero, which no text of ours has.
    return text.includes('\0') ? { ok: false, fault: { kind: 'not-text' } } : { ok: true, text };
  } catch {
    return { ok: false, fault: { kind: 'not-text' } };
  }
};

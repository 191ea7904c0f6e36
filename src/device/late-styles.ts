/**
 * The styles that no first view waits for come as styles for paper, which hold nothing up; from here on the face of the
 * formulae in them is for the screen too. Pages without a script ask for them once more, in `noscript`.
 */
export function useLateStyles(): void {
  const sheet = document.querySelector<HTMLLinkElement>('link[media="print"]');
  if (sheet) sheet.media = 'all';
}

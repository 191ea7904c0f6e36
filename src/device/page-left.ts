/** Calls `left` when the page is left, and `back` when it is shown again as it stood. Returns the way to stop it. */
export const whenPageIsLeft = (left: () => void, back: () => void): (() => void) => {
  const onShow = (event: PageTransitionEvent): void => {
    if (event.persisted) back();
  };
  addEventListener('pagehide', left);
  addEventListener('pageshow', onShow);
  return () => {
    removeEventListener('pagehide', left);
    removeEventListener('pageshow', onShow);
  };
};

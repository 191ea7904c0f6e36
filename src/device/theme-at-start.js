/* Sets the chosen colours before the first paint; stands inline in the head of every page. Its hash is in the policy. */
(() => {
  const key = 'evendraw-theme';
  const show = (choice) => {
    const forced = choice === 'light' || choice === 'dark';
    if (forced) document.documentElement.dataset.theme = choice;
    else delete document.documentElement.dataset.theme;
    for (const meta of document.querySelectorAll('meta[name="theme-color"]'))
      meta.media = forced
        ? meta.dataset.scheme === choice
          ? 'all'
          : 'not all'
        : `(prefers-color-scheme: ${meta.dataset.scheme})`;
  };
  try {
    show(localStorage.getItem(key));
  } catch {
    /* Without storage the device's own setting holds. */
  }
  addEventListener('storage', (event) => event.key === key && show(event.newValue));
  addEventListener('themechoice', (event) => show(event.detail));
})();

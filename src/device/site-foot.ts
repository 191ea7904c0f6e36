import type { OfflineState } from './service-worker.ts';
import { chooseTheme, storedTheme } from './theme.ts';

const reasons = {
  insecure: 'that needs an https address.',
  'no-worker': 'this browser, or this kind of window, does not offer it.',
  development: 'this is the developers’ server.',
};

function words(state: OfflineState): string {
  switch (state.kind) {
    case 'not-offered':
      return `Not saved for use without a network: ${reasons[state.reason]}`;
    case 'saving':
      return 'Saving the site for use without a network.';
    case 'failed':
      return 'Not saved for use without a network: the connection broke or there was no room. Load the page again to try once more.';
    case 'saved':
      return `Saved for use without a network: version ${state.saved.version}, ${state.saved.megabytes} MB.`;
    case 'new-version':
      return state.otherWindows === 0
        ? 'A new version is ready.'
        : 'A new version is ready. Close the other windows of this site, then load it here.';
  }
}

/** Says in the foot of the page how the saving goes. A page without a foot says nothing and is never interrupted. */
export function tellInFoot(state: OfflineState): void {
  const offline = document.querySelector<HTMLElement>('#offline');
  const loadIt = document.querySelector<HTMLButtonElement>('#load-new-version');
  if (!offline || !loadIt) return;
  // What was so before the page was opened is shown, but not read out on every page.
  offline.ariaLive = state.kind === 'saved' && state.before ? 'off' : 'polite';
  offline.textContent = words(state);
  loadIt.hidden = state.kind !== 'new-version';
  if (state.kind === 'new-version') loadIt.onclick = state.load;
}

/** Lets the reader choose the colours in the foot of the page. */
export function offerColours(): void {
  for (const input of document.querySelectorAll<HTMLInputElement>('#theme input')) {
    input.checked = input.value === storedTheme();
    input.addEventListener('change', () => chooseTheme(input.value));
  }
}

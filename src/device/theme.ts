const key = 'evendraw-theme';

/** The reader's choice of colours: `light`, `dark`, or `auto` for what the device says. */
export function storedTheme(): string {
  try {
    return localStorage.getItem(key) ?? 'auto';
  } catch {
    return 'auto';
  }
}

/** Keeps the choice if there is storage, and shows it at once (the script in the head listens). */
export function chooseTheme(choice: string): void {
  try {
    localStorage.setItem(key, choice);
  } catch {
    // Without storage the choice holds for this page.
  }
  dispatchEvent(new CustomEvent('themechoice', { detail: choice }));
}

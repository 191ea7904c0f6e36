import { askForParts } from './ask-for-parts.ts';

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
type Load = () => Promise<() => Promise<void>>;

/** A way in which an island starts: `load` fetches its parts and gives what wakes it; `value` is what the page says. */
export type IslandStart = (
  load: Load,
  options: { readonly value: string | true },
  island: HTMLElement,
) => void;

const failed =
  'A part of this page did not arrive, so it cannot compute. Load the page again once there is a network.';

const isTick = (control: Control): control is HTMLInputElement =>
  control instanceof HTMLInputElement && ['checkbox', 'radio'].includes(control.type);

const isTicked = (control: Control): boolean => isTick(control) && control.checked;

/** Whether somebody has typed, chosen or ticked something since the page came. */
function isChanged(control: Control): boolean {
  if (isTick(control)) return control.checked !== control.defaultChecked;
  if (!(control instanceof HTMLSelectElement)) return control.value !== control.defaultValue;
  const options = [...control.options];
  return control.value !== (options.find((option) => option.defaultSelected) ?? options[0])?.value;
}

/** Does once more what was done to a control before the island listened. */
function repeat(control: Control, value: string, checked: boolean): void {
  if (isTick(control)) control.checked = checked;
  else control.value = value;
  for (const type of ['input', 'change']) control.dispatchEvent(new Event(type, { bubbles: true }));
}

/** Puts the caret back where it is now, or what is selected. */
function keptCaret(): () => void {
  const { activeElement: field } = document;
  const isText =
    field instanceof HTMLTextAreaElement || (field instanceof HTMLInputElement && field.type === 'text');
  if (!isText) return () => undefined;
  const { selectionStart, selectionEnd } = field;
  return () => field.setSelectionRange(selectionStart, selectionEnd);
}

function sayThatItFailed(island: HTMLElement): void {
  const sentence = Object.assign(document.createElement('p'), { className: 'errors', textContent: failed });
  sentence.role = 'alert';
  island.prepend(sentence);
}

const drawn = () => new Promise((done) => setTimeout(done));

/** Starts an island; what is typed, chosen and pressed while its parts are on their way is then done. */
export async function startIsland(load: Load, island: HTMLElement): Promise<void> {
  let pressed: HTMLElement | null = null;
  const press = (event: Event): void => {
    const { target } = event;
    if (!(target instanceof Element)) return;
    pressed = target.closest<HTMLElement>('button, a');
    // A link may be about to lead elsewhere.
    if (pressed instanceof HTMLAnchorElement) event.preventDefault();
    if (target instanceof HTMLInputElement && target.dataset.example === target.value) target.select();
  };
  island.addEventListener('click', press);
  island.addEventListener('astro:hydration-error', () => sayThatItFailed(island), { once: true });
  askForParts((island.dataset.parts ?? '').split(' ').filter(Boolean));
  const hydrate = await load();
  island.removeEventListener('click', press);
  const entries = [...island.querySelectorAll<Control>('input, select, textarea')]
    .filter((control) => isChanged(control) && (control.type !== 'radio' || isTicked(control)))
    .map((control) => [control, control.value, isTicked(control)] as const);
  const putCaretBack = keptCaret();
  await hydrate();
  for (const entry of entries) {
    repeat(...entry);
    await null; // The island draws what follows from it before the next; a key that is pressed now comes after all.
  }
  putCaretBack();
  await drawn();
  (pressed as HTMLElement | null)?.click();
}

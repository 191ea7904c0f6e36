import katex from 'katex';

/**
 * TeX to MathML, at build only. Faulty TeX throws, so it fails the build instead of reaching a page.
 * MathML alone needs no style sheet, no fonts and no inline style attributes, which the page's policy forbids.
 */
export function renderFormula(tex: string, display = false): string {
  const math = katex.renderToString(tex, {
    displayMode: display,
    throwOnError: true,
    strict: 'error',
    output: 'mathml',
  });
  // A wide one scrolls by itself, which the keyboard must reach.
  return display ? `<div class="formula" role="group" aria-label="Formula" tabindex="0">${math}</div>` : math;
}

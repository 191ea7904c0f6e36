/** The reader's own decimal mark, from the language of the browser. */
export const decimalMark = (): 'point' | 'comma' =>
  new Intl.NumberFormat().formatToParts(1.1).some(({ type, value }) => type === 'decimal' && value === ',')
    ? 'comma'
    : 'point';

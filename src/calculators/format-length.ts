import { formatSignificant, formatTrimmed } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';
import { metresPerInch } from './exact-definitions.ts';

/** A length as a rule shows it: `3.40 m` from a metre up, else `409 mm`, below 100 mm to a tenth. */
export const formatLength = (metres: number, style: NumberStyle = {}): string =>
  metres >= 1
    ? `${formatSignificant(metres, 3, style)}\u00a0m`
    : `${metres < 0.1 ? formatTrimmed(metres * 1000, 1, 0, style) : formatSignificant(metres * 1000, 3, style)}\u00a0mm`;

/** The same in inches, to a tenth: `16.1 in`. */
export const formatInches = (metres: number, style: NumberStyle = {}): string =>
  `${formatSignificant(metres / metresPerInch, 3, style)}\u00a0in`;

import { columnPressurePa } from '../column-pressure.ts';
import { conventionalMercuryDensity } from '../exact-definitions.ts';
import { formatFixed } from '../format-number.ts';

/** A conventional millimetre of mercury, in pascals. */
export const mmHgPa = columnPressurePa(conventionalMercuryDensity, 1e-3);

/** Whole millimetres of mercury, without the table of all units: `213`, and with the symbol. */
export const mmHgNumber = (pascals: number): string => formatFixed(pascals / mmHgPa, 0);
export const mmHgWords = (pascals: number): string => `${mmHgNumber(pascals)}\u00a0mmHg`;

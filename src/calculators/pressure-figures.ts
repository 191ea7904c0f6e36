import { formatFixed } from './format-number.ts';
import type { DecimalMark } from './format-number.ts';
import { inUnit, pressureUnit } from './pressure-units.ts';

/** Pressures as one answer writes them: in one unit, with as many decimals, and the decimal mark that was typed. */
export type PressureFigures = {
  /** `213`. */
  readonly number: (pascals: number) => string;
  /** `213 mmHg`. */
  readonly withUnit: (pascals: number) => string;
  /** `213 ± 4 mmHg`. */
  readonly range: (pascals: number, halfWidthPa: number) => string;
  /** `37 ± 6 mmHg higher than carburettor 2`, or `level with carburettor 2, ± 6 mmHg`; the sign has become a word. */
  readonly apart: (differencePa: number, halfWidthPa: number, from: string) => string;
};

export const pressureFigures = (unitId: string, decimals: number, mark: DecimalMark): PressureFigures => {
  const unit = pressureUnit(unitId);
  const number = (pascals: number): string => formatFixed(inUnit(pascals, unit), decimals, { mark });
  const range = (pascals: number, halfWidthPa: number): string =>
    `${number(pascals)}\u00a0±\u00a0${number(halfWidthPa)}\u00a0${unit.symbol}`;
  return {
    number,
    range,
    withUnit: (pascals) => `${number(pascals)}\u00a0${unit.symbol}`,
    apart: (differencePa, halfWidthPa, from) =>
      /[1-9]/u.test(number(differencePa))
        ? `${range(Math.abs(differencePa), halfWidthPa)} ${differencePa < 0 ? 'lower' : 'higher'} than ${from}`
        : `level with ${from}, ±\u00a0${number(halfWidthPa)}\u00a0${unit.symbol}`,
  };
};

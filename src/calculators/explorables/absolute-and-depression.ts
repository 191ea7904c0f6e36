import { pressureFigures } from '../pressure-figures.ts';
import { pascalsOf, pressureUnit } from '../pressure-units.ts';
import { absolutePressurePa, depressionOf } from '../quantities.ts';

/** Both in hectopascals, as a barometer shows them. */
export const ambientHPaLimits = { min: 700, max: 1050, step: 5 } as const;
export const intakeHPaLimits = { min: 200, max: 1050, step: 5 } as const;

export type AirAndIntake = { readonly ambientHPa: number; readonly intakeHPa: number };

/** Invented: an ordinary day, and an engine a little above idle. */
export const airAndIntakeExample: AirAndIntake = { ambientHPa: 1015, intakeHPa: 680 };
const lowDayHPa = 985;

export type AbsoluteAndDepressionShown = {
  readonly ambientPa: number;
  readonly absolutePa: number;
  /** Negative where the intake stands above the air outside. */
  readonly depressionPa: number;
  readonly ambient: string;
  readonly absolute: string;
  readonly depression: string;
  readonly said: string;
};

/** One state of the intake, counted from nothing and from the air outside: absolute + depression = ambient. */
export function absoluteAndDepression({ ambientHPa, intakeHPa }: AirAndIntake): AbsoluteAndDepressionShown {
  const hPa = pressureUnit('hPa');
  const { withUnit } = pressureFigures('hPa', 0, 'point');
  const ambientPa = absolutePressurePa(pascalsOf(ambientHPa, hPa));
  const absolutePa = absolutePressurePa(pascalsOf(intakeHPa, hPa));
  const depressionPa = depressionOf(ambientPa, absolutePa);
  const [ambient, absolute, depression] = [ambientPa, absolutePa, depressionPa].map(withUnit) as [
    string,
    string,
    string,
  ];
  const inMmHg = pressureFigures('mmHg', 0, 'point').withUnit(depressionPa);
  return {
    ambientPa,
    absolutePa,
    depressionPa,
    ambient,
    absolute,
    depression,
    said:
      depressionPa < 0
        ? `${absolute} in the intake is more than the ${ambient} outside: there is no depression, and a gauge for it stays at its stop.`
        : `${ambient} outside less ${absolute} in the intake: the gauge shows a depression of ${depression}, which is ${inMmHg}.`,
  };
}

export function depressionFinding(): string {
  const { intakeHPa, ambientHPa } = airAndIntakeExample;
  const [usual, low] = [ambientHPa, lowDayHPa].map((each) =>
    absoluteAndDepression({ intakeHPa, ambientHPa: each }),
  );
  return `A depression is counted from the air outside. The same intake, ${usual!.absolute} absolute, shows ${usual!.depression} on a day of ${usual!.ambient} and ${low!.depression} on one of ${low!.ambient}, though nothing in the engine has changed.`;
}

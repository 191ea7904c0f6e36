/**
 * Where a constant comes from. `exact`: by definition. `conventional`: exact by agreement about something that varies,
 * as the density of mercury. `measured`: by somebody, and published. `common practice`: of the trade, without a source.
 * `from memory`: ours, without a source. `simulation`: found with invented engines; see the page on the study.
 */
export const constantOrigins = [
  'exact',
  'conventional',
  'measured',
  'common practice',
  'from memory',
  'simulation',
] as const;
export type ConstantOrigin = (typeof constantOrigins)[number];

/** A number, its lower and upper limit, or the coefficients of a formula from the lowest power. */
export type ConstantValue =
  number | { readonly min?: number; readonly max?: number } | readonly (number | readonly number[])[];

export type Constant = {
  /** Its name in the code: `standardGravity`, `priors.driftSdPa`. */
  readonly name: string;
  readonly value: ConstantValue;
  /** `1` for a plain number. */
  readonly unit: string;
  /** What it is, in a few words. */
  readonly what: string;
  readonly origin: ConstantOrigin;
  /** Id in the list of sources; null where nothing is published. */
  readonly source: string | null;
};

export type ConstantGroup = { readonly title: string; readonly constants: readonly Constant[] };

/** Unit, what it is, origin and source of each constant of a module or an object, by its name. */
export type ConstantWords<Names extends PropertyKey> = Readonly<
  Record<Names, readonly [unit: string, what: string, origin: ConstantOrigin, source?: string | null]>
>;

/**
 * The constants of a module or an object, with their words. Every one has to have words, or the compiler says so.
 * @param prefix stands before each name: `priors.`
 */
export const describeConstants = <Values extends Readonly<Record<keyof Values, ConstantValue>>>(
  values: Values,
  words: ConstantWords<keyof Values>,
  prefix = '',
): readonly Constant[] =>
  (Object.keys(words) as (keyof Values & string)[]).map((name) => {
    const [unit, what, origin, source = null] = words[name];
    return { name: `${prefix}${name}`, value: values[name], unit, what, origin, source };
  });

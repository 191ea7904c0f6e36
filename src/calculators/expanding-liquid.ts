import type { Liquid } from './liquid.ts';

/** A constant expansion is believed near the 20 °C that it was given for. */
export const expandingLimit = { min: 0, max: 60 } as const;

type Expanding = Omit<Liquid, 'density' | 'range'> & {
  readonly kgPerM3At20: number;
  readonly expansionPerK: number;
  readonly expansionSourceId: string;
};

/** A liquid that is known by its density at 20 °C and its cubic expansion. */
export const expandingLiquid = ({
  kgPerM3At20,
  expansionPerK,
  expansionSourceId,
  ...rest
}: Expanding): Liquid => ({
  ...rest,
  density: { kind: 'expansion', kgPerM3At20, expansionPerK, expansionSourceId },
  range: expandingLimit,
});

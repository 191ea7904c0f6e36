/** How the density of a liquid follows its temperature. */
export type LiquidDensity =
  | { readonly kind: 'water' }
  | { readonly kind: 'mercury' }
  /** Ethylene glycol in water; the strength comes with the question. */
  | { readonly kind: 'glycol-solution' }
  /** ρ₂₀ exp(−β (t − 20 °C)): a density at 20 °C and a cubic expansion. */
  | {
      readonly kind: 'expansion';
      readonly kgPerM3At20: number;
      readonly expansionPerK: number;
      readonly expansionSourceId: string;
    };

/** Why a liquid is refused or watched. `flammable`: its vapour burns at the temperature of a workshop or an engine. */
export type LiquidHazard = 'flammable' | 'poisonous' | 'mercury';

export type Liquid = {
  readonly id: string;
  readonly name: string;
  /** Other names, as tables and people write them. */
  readonly aliases: readonly string[];
  readonly density: LiquidDensity;
  /** Temperatures for which the density is believed, in degrees Celsius. */
  readonly range: { readonly min: number; readonly max: number };
  readonly hazards: readonly LiquidHazard[];
  /** What it does to people, engines and surroundings, in a sentence. */
  readonly hazardWords: string;
  /** Id in the bibliography. */
  readonly sourceId: string;
};

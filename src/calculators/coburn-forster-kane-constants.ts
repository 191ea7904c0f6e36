/*
 * What the Coburn–Forster–Kane equation takes of a person. Five of the figures can be read back out of the form that a
 * state uses: its 5500 and 0.007 stand as such, its 0.0046 is PcO2/(100 M) and its 2.3 is PcO2/(M [O2Hb]).
 */

export type CfkConstant = {
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** Id in the list of sources, and how it was seen. */
  readonly sourceId: 'cfk' | 'miosha-coburn' | 'cohb-code' | 'peterson-stewart';
  readonly seen: 'copy' | 'memory';
};

export const cfkConstants = {
  haldaneRatio: {
    symbol: 'M',
    name: 'Haldane constant: affinity of haemoglobin for carbon monoxide over that for oxygen',
    value: 218,
    unit: '1',
    sourceId: 'cohb-code',
    seen: 'copy',
  },
  bloodVolume: {
    symbol: 'Vb',
    name: 'blood volume',
    value: 5500,
    unit: 'mL',
    sourceId: 'miosha-coburn',
    seen: 'copy',
  },
  endogenousProduction: {
    symbol: 'Vco',
    name: 'carbon monoxide that the body itself makes',
    value: 0.007,
    unit: 'mL/min',
    sourceId: 'cohb-code',
    seen: 'copy',
  },
  capillaryOxygen: {
    symbol: 'PcO2',
    name: 'mean oxygen pressure in the capillaries of the lung',
    value: 100,
    unit: 'mmHg',
    sourceId: 'miosha-coburn',
    seen: 'copy',
  },
  capillaryOxygenAtSeaLevel: {
    symbol: 'PcO2',
    name: 'the same as 159 − 49 at sea level, an alternative that is not used here',
    value: 110,
    unit: 'mmHg',
    sourceId: 'cfk',
    seen: 'copy',
  },
  oxygenCapacity: {
    symbol: '[O2Hb]max',
    name: 'oxyhaemoglobin at full saturation, oxygen in blood',
    value: 0.2,
    unit: 'mL/mL',
    sourceId: 'miosha-coburn',
    seen: 'copy',
  },
  barometricPressure: {
    symbol: 'PB',
    name: 'barometric pressure, sea level',
    value: 760,
    unit: 'mmHg',
    sourceId: 'cohb-code',
    seen: 'copy',
  },
  waterVapour: {
    symbol: 'PH2O',
    name: 'water vapour in the lung, 37 °C',
    value: 47,
    unit: 'mmHg',
    sourceId: 'cohb-code',
    seen: 'copy',
  },
  ventilationAtRest: {
    symbol: 'VA',
    name: 'alveolar ventilation at rest',
    value: 6000,
    unit: 'mL/min',
    sourceId: 'peterson-stewart',
    seen: 'memory',
  },
  ventilationAtLightWork: {
    symbol: 'VA',
    name: 'alveolar ventilation at light work',
    value: 18000,
    unit: 'mL/min',
    sourceId: 'peterson-stewart',
    seen: 'memory',
  },
  diffusingCapacityAtRest: {
    symbol: 'DL',
    name: 'diffusing capacity of the lung at rest',
    value: 30,
    unit: 'mL/(min mmHg)',
    sourceId: 'peterson-stewart',
    seen: 'memory',
  },
  diffusingCapacityAtLightWork: {
    symbol: 'DL',
    name: 'diffusing capacity of the lung at light work',
    value: 40,
    unit: 'mL/(min mmHg)',
    sourceId: 'peterson-stewart',
    seen: 'memory',
  },
  startOfNonSmoker: {
    symbol: 'COHb0',
    name: 'carboxyhaemoglobin of somebody who does not smoke',
    value: 0.8,
    unit: '% COHb',
    sourceId: 'cfk',
    seen: 'copy',
  },
} as const satisfies Record<string, CfkConstant>;

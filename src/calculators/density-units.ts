import { inchesPerFoot, kilogramsPerPound, metresPerInch } from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

/** Densities, in kilograms per cubic metre. */
export const densities: MeasureFamily = {
  name: 'density',
  siUnit: 'kg/m³',
  limit: { above: 0 },
  units: [
    unitEntry('kg/m3', 'kilograms per cubic metre', 1, 'the SI unit', 'kg/cu m, g/L, grams per litre', siBrochure, 'kg/m³'),
    unitEntry('g/cm3', 'grams per cubic centimetre', 1000, '0.001 kg / (0.01 m)³', 'g/cc, g/mL, kg/L, kg/dm3, g/ccm, grams per millilitre, kilograms per litre', siBrochure, 'g/cm³'),
    unitEntry('lb/ft3', 'pounds per cubic foot', kilogramsPerPound / (inchesPerFoot * metresPerInch) ** 3, '0.45359237 kg / (12 × 0.0254 m)³', 'lb/cu ft, lbs/ft3, pcf', sp811, 'lb/ft³'),
  ],
}; // prettier-ignore

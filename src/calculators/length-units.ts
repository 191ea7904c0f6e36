import { feetPerMile, feetPerYard, inchesPerFoot, metresPerInch } from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

const metresPerFoot = inchesPerFoot * metresPerInch;

/** Lengths, in metres. The mil is refused: to some it is a thousandth of an inch, to others a millimetre. */
export const lengths: MeasureFamily = {
  name: 'length',
  siUnit: 'm',
  units: [
    unitEntry('um', 'micrometres', 1e-6, '0.000001 m', 'micrometre, micrometer, micrometers, micron, microns, mu', siBrochure, 'µm'),
    unitEntry('mm', 'millimetres', 1e-3, '0.001 m', 'millimetre, millimeter, millimeters'),
    unitEntry('cm', 'centimetres', 1e-2, '0.01 m', 'centimetre, centimeter, centimeters'),
    unitEntry('m', 'metres', 1, 'the SI unit', 'metre, meter, meters'),
    unitEntry('km', 'kilometres', 1e3, '1000 m', 'kilometre, kilometer, kilometers'),
    unitEntry('thou', 'thousandths of an inch', metresPerInch / 1000, '0.001 × 0.0254 m', 'thous, thousandth, thousandths', sp811),
    unitEntry('in', 'inches', metresPerInch, '0.0254 m', 'inch, ins', sp811),
    unitEntry('ft', 'feet', metresPerFoot, '12 × 0.0254 m', 'foot', sp811),
    unitEntry('yd', 'yards', feetPerYard * metresPerFoot, '3 × 12 × 0.0254 m', 'yard, yds', sp811),
    unitEntry('mile', 'miles', feetPerMile * metresPerFoot, '5280 × 12 × 0.0254 m', 'mi, statute mile', sp811),
  ],
}; // prettier-ignore

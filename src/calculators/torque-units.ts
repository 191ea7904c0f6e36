import {
  inchesPerFoot,
  kilogramsPerPound,
  metresPerInch,
  ouncesPerPound,
  standardGravity,
} from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily } from './measure-unit.ts';

const newtonsPerPoundForce = kilogramsPerPound * standardGravity;
const lbf = '0.45359237 kg × 9.80665 m/s²';

/** Torques, in newton metres. */
export const torques: MeasureFamily = {
  name: 'torque',
  siUnit: 'N·m',
  units: [
    unitEntry(
      'Nm',
      'newton metres',
      1,
      'the SI unit',
      'newton metre, newton meter, newton meters',
      siBrochure,
      'N·m',
    ),
    unitEntry(
      'Ncm',
      'newton centimetres',
      0.01,
      '1 N × 0.01 m',
      'newton centimetre, newton centimeter, newton centimeters',
      siBrochure,
      'N·cm',
    ),
    unitEntry(
      'kgfm',
      'kilogram-force metres',
      standardGravity,
      '9.80665 N × 1 m',
      'kg m, m kgf, m kg, kp m, m kp, kilogram metres, metre kilograms',
      sp811,
      'kgf·m',
    ),
    unitEntry(
      'kgfcm',
      'kilogram-force centimetres',
      standardGravity / 100,
      '9.80665 N × 0.01 m',
      'kg cm, cm kgf, cm kg, kp cm, cm kp',
      sp811,
      'kgf·cm',
    ),
    unitEntry(
      'lbfft',
      'pound-force feet',
      newtonsPerPoundForce * inchesPerFoot * metresPerInch,
      `${lbf} × 12 × 0.0254 m`,
      'ft lbf, ft lb, ft lbs, lb ft, lbs ft, foot pound, foot pounds, pound foot, pound feet',
      sp811,
      'lbf·ft',
    ),
    unitEntry(
      'lbfin',
      'pound-force inches',
      newtonsPerPoundForce * metresPerInch,
      `${lbf} × 0.0254 m`,
      'in lbf, in lb, in lbs, lb in, lbs in, inch pound, inch pounds, pound inch, pound inches',
      sp811,
      'lbf·in',
    ),
    unitEntry(
      'ozfin',
      'ounce-force inches',
      (newtonsPerPoundForce / ouncesPerPound) * metresPerInch,
      `${lbf} / 16 × 0.0254 m`,
      'in ozf, oz in, in oz, inch ounce, inch ounces, ounce inch, ounce inches',
      sp811,
      'ozf·in',
    ),
  ],
};

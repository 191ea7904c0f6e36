import {
  cubicInchesPerUsGallon,
  imperialFluidOuncesPerGallon,
  inchesPerFoot,
  litresPerImperialGallon,
  metresPerInch,
  pintsPerGallon,
  quartsPerGallon,
  usFluidOuncesPerGallon,
} from './exact-definitions.ts';
import { siBrochure, sp811, unitEntry } from './measure-unit-entry.ts';
import type { MeasureFamily, MeasureUnit } from './measure-unit.ts';

const cubicInch = metresPerInch ** 3;

/** The gallons of two countries, which are a fifth apart: their measures are refused without a country. */
const us = {
  id: 'us',
  symbol: 'US',
  countries: ['US', 'U.S.', 'American'],
  gallon: cubicInchesPerUsGallon * cubicInch,
  composition: '231 × (0.0254 m)³',
};
const imperial = {
  id: 'imp',
  symbol: 'imp.',
  countries: ['imperial', 'imp', 'UK', 'U.K.', 'British'],
  gallon: litresPerImperialGallon / 1000,
  composition: '4.54609 L',
};

/** `words`: what people call it, its symbol first and its plural second. */
function shareOfGallon(
  country: typeof us,
  words: readonly [string, string, ...string[]],
  perGallon: number,
): MeasureUnit {
  const [symbol, plural] = words;
  const aliases = country.countries.flatMap((name) =>
    words.flatMap((word) => [`${name} ${word}`, `${word} ${name}`]),
  );
  return unitEntry(
    `${country.id}-${symbol.replace(' ', '')}`,
    `${country.countries[0]} ${plural}`,
    country.gallon / perGallon,
    perGallon === 1 ? country.composition : `${country.composition} / ${perGallon}`,
    aliases.join(', '),
    sp811,
    `${country.symbol} ${symbol}`,
  );
}

const fluidOunce = ['fl oz', 'fluid ounces', 'fluid ounce', 'oz'] as const;
const pint = ['pt', 'pints', 'pint'] as const;
const quart = ['qt', 'quarts', 'quart'] as const;
const gallon = ['gal', 'gallons', 'gallon'] as const;

/** Volumes, in cubic metres. */
export const volumes: MeasureFamily = {
  name: 'volume',
  siUnit: 'm³',
  limit: { min: 0 },
  units: [
    unitEntry(
      'mm3',
      'cubic millimetres',
      1e-9,
      '(0.001 m)³',
      'cubic millimetre, cubic millimeter, cubic millimeters, cu mm, microlitre, microlitres',
      siBrochure,
      'mm³',
    ),
    unitEntry(
      'cm3',
      'cubic centimetres',
      1e-6,
      '(0.01 m)³',
      'cc, ccm, cubic centimetre, cubic centimeter, cubic centimeters, cu cm',
      siBrochure,
      'cm³',
    ),
    unitEntry('mL', 'millilitres', 1e-6, '0.001 L', 'millilitre, milliliter, milliliters', siBrochure),
    unitEntry(
      'L',
      'litres',
      1e-3,
      '(0.1 m)³',
      'ltr, litre, liter, liters, dm3, cubic decimetre, cubic decimetres',
      siBrochure,
    ),
    unitEntry(
      'm3',
      'cubic metres',
      1,
      'the SI unit',
      'cubic metre, cubic meter, cubic meters, cu m',
      siBrochure,
      'm³',
    ),
    unitEntry('in3', 'cubic inches', cubicInch, '(0.0254 m)³', 'cubic inch, cu in, cid, ci', sp811, 'in³'),
    unitEntry(
      'ft3',
      'cubic feet',
      inchesPerFoot ** 3 * cubicInch,
      '(12 × 0.0254 m)³',
      'cubic foot, cu ft, cf',
      sp811,
      'ft³',
    ),
    shareOfGallon(us, fluidOunce, usFluidOuncesPerGallon),
    shareOfGallon(imperial, fluidOunce, imperialFluidOuncesPerGallon),
    shareOfGallon(us, pint, pintsPerGallon),
    shareOfGallon(imperial, pint, pintsPerGallon),
    shareOfGallon(us, quart, quartsPerGallon),
    shareOfGallon(imperial, quart, quartsPerGallon),
    shareOfGallon(us, gallon, 1),
    shareOfGallon(imperial, gallon, 1),
  ],
};

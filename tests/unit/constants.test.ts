import { describe, expect, it } from 'vitest';
import { defaults, margins, priors } from '../../src/calculators/advisor/priors.ts';
import { benchDefaults } from '../../src/calculators/bench-defaults.ts';
import { cfkConstants } from '../../src/calculators/coburn-forster-kane-constants.ts';
import * as dryAir from '../../src/calculators/dry-air.ts';
import * as definitions from '../../src/calculators/exact-definitions.ts';
import { constantGroups, constantOrigins, constantTables, liquids } from '../../src/calculators/index.ts';
import * as invented from '../../src/calculators/practice/constants.ts';
import { squaredDivisors } from '../../src/calculators/standard-uncertainty.ts';
import { calculators } from '../../src/content/calculators.ts';
import { sources } from '../../src/content/sources.ts';

const constants = constantGroups.flatMap((group) => group.constants);
const pages = calculators.map(({ path }) => path.replaceAll('/', ''));

describe('list of constants', () => {
  it('each has a name of its own, a value, a unit, words, an origin and, where something is published, a source', () => {
    expect(new Set(constants.map(({ name }) => name)).size).toBe(constants.length);
    for (const { name, value, unit, what, origin, source } of constants) {
      expect(value, name).toBeDefined();
      expect(unit, name).toMatch(/^\S/u);
      expect(what, name).toMatch(/^\S/u);
      expect(constantOrigins, name).toContain(origin);
      if (source !== null) expect(Object.keys(sources), name).toContain(source);
      if (['exact', 'conventional', 'measured', 'simulation'].includes(origin))
        expect(source, name).not.toBeNull();
    }
    expect(new Set(constants.map(({ origin }) => origin))).toEqual(new Set(constantOrigins));
  });

  it('each group has its own title', () => {
    const titles = constantGroups.map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
    for (const title of titles) expect(title).toMatch(/^\p{Lu}\p{Ll}+/u);
  });

  it.each<[prefix: string, held: Readonly<Record<string, unknown>>]>([
    ['', definitions],
    ['', dryAir],
    ['', invented],
    ['priors.', priors],
    ['margins.', margins],
    ['defaults.', defaults],
    ['benchDefaults.', benchDefaults],
    ['squaredDivisors.', squaredDivisors],
  ])('has all that is held together: %s', (prefix, held) => {
    const names = Object.keys(held);
    expect(names.length).toBeGreaterThan(2);
    for (const name of names)
      expect(constants.find((constant) => constant.name === prefix + name)?.value, name).toBe(held[name]);
  });

  it('has what is known of blood, as it was published', () => {
    expect(Object.keys(cfkConstants).length).toBeGreaterThan(2);
    for (const [name, { value, unit, name: what, sourceId }] of Object.entries(cfkConstants))
      expect(constants).toContainEqual({
        name: `cfkConstants.${name}`,
        value,
        unit,
        what,
        origin: 'measured',
        source: sourceId,
      });
  });

  // Values, units and bodies as the cited works print them.
  it.each([
    ['standardGravity', 9.80665, 'm/s²', 'exact', 'si'],
    ['molarGasConstant', 8.31446261815324, 'J/(mol K)', 'exact', 'si'],
    ['heatCapacityRatioOfAir', 1.4, '1', 'conventional', 'iso2533'],
    ['seaLevelTemperatureK', 288.15, 'K', 'conventional', 'us-1976'],
    ['gravityAtEquator', 9.780327, 'm/s²', 'conventional', 'grs80'],
    ['cubicCentimetresPerOlderMillilitre', 1.000028, 'cm³', 'from memory', null],
    ['fourStrokeCycleDegrees', 720, '°', 'exact', 'heywood'],
    ['millimetresPerInch', 25.4, 'mm', 'exact', 'sp811'],
    ['carbonMonoxideGPerMol', 28.0101, 'g/mol', 'measured', 'atomic-weights'],
    ['coverageFactorAt95', 1.96, '1', 'conventional', 'gum'],
    ['accuracyClasses', [0.1, 0.25, 0.6, 1, 1.6, 2.5, 4], '% of the span', 'conventional', 'en837'],
    ['squaredDivisors.rectangular', 3, '1', 'exact', 'gum'],
    ['comparedWidening', expect.any(Number), '1', 'simulation', 'simulation'],
    ['shortOfThreadTurns', expect.any(Number), 'turns', 'from memory', null],
    ['columnMargin', expect.any(Number), '1', 'common practice', null],
  ])('%s is %s %s, %s', (name, value, unit, origin, source) => {
    expect(constants.find((constant) => constant.name === name)).toMatchObject({
      value,
      unit,
      origin,
      source,
    });
  });
});

describe('list of tables', () => {
  it('each has its own words, rows, a page and sources of the bibliography, none twice', () => {
    const words = constantTables.map(({ what }) => what);
    expect(new Set(words).size).toBe(words.length);
    for (const { what, rows, sources: ids, page } of constantTables) {
      expect(what).toMatch(/^\p{Lu}\p{Ll}{4}.*[^\s:]$/u);
      expect(rows, what).toBeGreaterThan(0);
      expect(pages, what).toContain(page);
      expect(ids.length, what).toBeGreaterThan(0);
      expect(new Set(ids).size, what).toBe(ids.length);
      for (const id of ids) expect(Object.keys(sources), what).toContain(id);
    }
  });

  it('names the sources of the densities of liquids, and of how they expand', () => {
    const ids = constantTables.find(({ what }) => what.startsWith('Liquids'))?.sources;
    for (const { sourceId, density } of liquids) {
      expect(ids).toContain(sourceId);
      if (density.kind === 'expansion') expect(ids).toContain(density.expansionSourceId);
    }
  });

  it('counts thin and regular nuts together', () => {
    expect(constantTables.find(({ what }) => what.startsWith('Hexagon nuts'))).toMatchObject({
      sources: ['iso4032', 'iso4035'],
    });
  });
});

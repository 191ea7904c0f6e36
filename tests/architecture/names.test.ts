import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { listFiles } from '../../tools/build/list-files.mjs';
import { root } from './source-tree.ts';

const slugOf = (component: string) =>
  component.replaceAll(/(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])/g, '-').toLowerCase();

/** Islands that compute nothing, or show what that of another name computes (the checklists), so have none of their own. */
const withoutCalculator = ['Search', 'ForClubs'];

const islands = readdirSync(`${root}src/components/islands`)
  .filter((file) => file.endsWith('.tsx'))
  .map((file) => basename(file, '.tsx'))
  .filter((island) => !withoutCalculator.includes(island));

describe('names', () => {
  it('there are islands to check', () => {
    expect(islands).toEqual(expect.arrayContaining(['BenchSession', 'UnitConverter']));
  });

  it.each(islands)('the slug of %s names its page, calculator and tests', (island) => {
    const slug = slugOf(island);
    const wanted = [
      `src/pages/${slug}.astro`,
      `src/calculators/${slug}.ts`,
      `tests/unit/${slug}.test.ts`,
      `tests/property/${slug}.test.ts`,
      `tests/browser/${slug}.spec.ts`,
    ];
    expect(wanted.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  it('turns the name of a component into its slug', () => {
    expect(slugOf('BenchSession')).toBe('bench-session');
    expect(slugOf('Search')).toBe('search');
    expect(slugOf('ExhaustGasInARoom')).toBe('exhaust-gas-in-a-room');
  });

  const ours = ['src', 'study', 'tests', 'tools', 'truth', 'public'].flatMap((folder) =>
    listFiles(root + folder).map((file) => `${folder}/${file}`),
  );

  it('no folder is a drawer for everything', () => {
    const faults = ours.filter((path) => /\/(utils?|helpers?|common|internal|misc|lib|shared)\//.test(path));
    expect(faults).toEqual([]);
  });

  it('components are in PascalCase, everything else in kebab-case', () => {
    const faults = ours
      .filter((path) => !path.startsWith('tests/data/'))
      .filter((path) => {
        const name = basename(path);
        const isComponent =
          /\.(tsx|astro)$/.test(name) && path.startsWith('src/') && dirname(path) !== 'src/pages';
        if (isComponent) return !/^[A-Z][A-Za-z]*\.(tsx|astro)$/.test(name);
        const isRoute = /^\[(?:slug|name)\](?:\.[a-z]+)+$/.test(name) && path.startsWith('src/pages/');
        return !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+)+$/.test(name) && !isRoute;
      });
    expect(faults).toEqual([]);
  });

  it('nothing names the machine it was written on, or where packages come from', () => {
    const top = readdirSync(root).filter((file) => /\.(json|md|mjs|ts|cff)$/.test(file));
    const paths = [...ours, '.ci/run', ...top].filter((path) => !/\.(png|ico|pdf|woff2)$/.test(path));
    const forbidden = [/(^|[^\w.~-])\/(work|farm|root|home)\/\w/, /\bregistry\.[a-z]+\./, /"resolved":/];
    const faults = paths
      .filter((path) => path !== 'tests/architecture/names.test.ts') // it has to say what it looks for
      .filter((path) => forbidden.some((pattern) => pattern.test(readFileSync(root + path, 'utf8'))));
    expect(paths).toContain('package-lock.json');
    expect(faults).toEqual([]);
  });
});

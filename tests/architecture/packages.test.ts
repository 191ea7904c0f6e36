import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { root, sourceFiles, importsOf } from './source-tree.ts';

interface Packages {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
  optionalDependencies: Record<string, string>;
  allowScripts: Record<string, boolean>;
}
interface Locked extends Packages {
  integrity?: string;
  resolved?: string;
  hasInstallScript?: boolean;
}

const packages = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as Packages;
const lock = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')) as {
  packages: Record<string, Locked>;
};

describe('packages', () => {
  it('at most five reach the reader', () => {
    expect(Object.keys(packages.dependencies).length).toBeLessThanOrEqual(5);
  });

  it('every version is exact', () => {
    const all = Object.entries({
      ...packages.dependencies,
      ...packages.devDependencies,
      ...packages.optionalDependencies,
    });
    expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it('each is locked by the hash of what was published, and to no place of its own', () => {
    const installed = Object.entries(lock.packages).filter(([path]) => path !== '');
    expect(installed.length).toBeGreaterThan(100);
    const loose = installed.filter(
      ([, { integrity, resolved }]) => !/^sha512-/.test(integrity ?? '') || resolved !== undefined,
    );
    expect(loose.map(([path]) => path)).toEqual([]);
  });

  it('a script at installation runs only where it is allowed by name', () => {
    const withScript = Object.entries(lock.packages)
      .filter(([, { hasInstallScript }]) => hasInstallScript)
      .map(([path]) => path.replace(/^.*node_modules\//, ''));
    const allowed = Object.keys(packages.allowScripts);
    expect(withScript.filter((name) => !allowed.includes(name))).toEqual([]);
    expect(allowed.filter((name) => !withScript.includes(name))).toEqual([]);
  });

  it('the lock is that of this package.json', () => {
    const { dependencies, devDependencies, optionalDependencies } = lock.packages['']!;
    expect({ dependencies, devDependencies, optionalDependencies }).toEqual({
      dependencies: packages.dependencies,
      devDependencies: packages.devDependencies,
      optionalDependencies: packages.optionalDependencies,
    });
  });

  it('what the source imports is named, and what reaches the reader is no development package', () => {
    const nameOf = (imported: string) =>
      imported
        .split('/')
        .slice(0, imported.startsWith('@') ? 2 : 1)
        .join('/');
    const known = Object.keys({ ...packages.dependencies, ...packages.devDependencies });
    const isPackage = (imported: string) => !/^(src\/|node:|astro:|gi:|package\.json)/.test(imported);
    const atRunTime = ['src/components/islands', 'src/device', 'src/drawing', 'src/calculators'].flatMap(
      sourceFiles,
    );
    expect(
      atRunTime
        .flatMap(importsOf)
        .filter(isPackage)
        .filter((name) => !(nameOf(name) in packages.dependencies)),
    ).toEqual([]);
    const everywhere = ['src', 'study', 'tests', 'tools', 'truth']
      .flatMap(sourceFiles)
      .flatMap(importsOf)
      .filter(isPackage);
    const unnamed = everywhere.filter(
      (name) => !/^(study|tests|tools|truth)\//.test(name) && !known.includes(nameOf(name)),
    );
    expect([...new Set(unnamed)]).toEqual([]);
  });
});

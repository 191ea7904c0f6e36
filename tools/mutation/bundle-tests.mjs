// In the folder where Stryker has written the mutants: makes scripts of the tests of a group and of all that they use.
import { isAbsolute, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { testsOf } from './groups.mjs';

/** Name of the script that a file becomes. */
const nameOf = (file) => `${relative('.', file).replaceAll('/', '-')}.cjs`;

/** A helper finds its files from where it stands, not from the bundle. */
const ownAddress = {
  name: 'own-address',
  transform: (code, file) =>
    isAbsolute(file) && code.includes('import.meta.url')
      ? code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(file).href))
      : null,
};

/** Each file of tests names itself, and is kept though nothing is imported from it. */
const namedTests = {
  name: 'named-tests',
  transform: (code, file) =>
    file.endsWith('.test.ts')
      ? {
          code: `import { inScript } from 'vitest';\ninScript(${JSON.stringify(nameOf(file))});\n${code}`,
          moduleSideEffects: true,
        }
      : null,
};

/** The functions at the head of a file with mutants, by those of mutant-switch.mjs; the numbers of mutants as numbers. */
const oneHead = {
  name: 'one-head',
  enforce: 'pre',
  transform(code) {
    if (!code.includes('function stryMutAct_9fa48(')) return null;
    const end = /function stryMutAct_9fa48\(id\) \{[^]*?\n\}\n/u.exec(code);
    if (end === null) throw new Error('Stryker writes another head to its files: see one-head.');
    const body = code
      .slice(end.index + end[0].length)
      .replaceAll(/stry(?:MutAct|Cov)_9fa48\((?:"\d+"(?:, )?)+\)/gu, (call) => call.replaceAll('"', ''));
    return `import { cover, isActive } from 'mutant-switch';
const stryCov_9fa48 = cover;
const stryMutAct_9fa48 = isActive;
${body}`;
  },
};

/** What the runner gives to the scripts. */
const given = ['vitest', 'fast-check', 'mutant-switch'];

await build({
  configFile: false,
  logLevel: 'error',
  publicDir: false,
  plugins: [oneHead, namedTests, ownAddress],
  ssr: { noExternal: true, external: given },
  build: {
    ssr: true,
    outDir: 'reports/tests',
    minify: false,
    rolldownOptions: {
      input: testsOf(process.env.MUTATION_GROUP),
      external: given,
      output: {
        format: 'cjs',
        entryFileNames: ({ facadeModuleId }) => nameOf(facadeModuleId),
        chunkFileNames: '[name]-[hash].cjs',
      },
    },
  },
});

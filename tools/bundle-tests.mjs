import { isAbsolute } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

/** A helper finds its files from where it stands, not from the test that it is bundled with. */
const ownAddress = {
  name: 'own-address',
  transform: (code, file) =>
    isAbsolute(file) && code.includes('import.meta.url')
      ? code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(file).href))
      : null,
};

/**
 * Stryker asks at every place whether its mutant is the one that runs, and counts how often it came there. Once a mutant
 * is chosen it is chosen for good, and nothing is counted: the loops of the practice engine take half the time.
 */
const askedOnce = (code) =>
  code
    .replaceAll(
      /function (stryCov_\w+(?:\$\d+)?)\(\) \{[^]*?function cover\(\) \{/gu,
      '$& if (ns.activeMutant !== undefined) { $1 = () => {}; return; }',
    )
    .replaceAll(
      /function (stryMutAct_\w+(?:\$\d+)?)\(id\) \{[^]*?function isActive\(id\) \{/gu,
      '$& if (ns.activeMutant !== undefined) { const active = ns.activeMutant; $1 = (id) => active === id && isActive(id); }',
    );

/** A mutant is caught or not by a test, never by the luck of a draw. Only what draws loads what draws. */
const drawnAlike = (code) =>
  /from ["']fast-check["']/u.test(code)
    ? `import { configureGlobal as drawAlike } from 'fast-check';\ndrawAlike({ seed: 2100, numRuns: 25 });\n${code}`
    : code;

/**
 * Gives a worker, which starts anew for each mutant, a test file and all that it uses as one module: it need not ask for
 * three hundred.
 */
export const bundleTests = {
  name: 'bundle-tests',
  enforce: 'pre',
  async load(id) {
    if (!/\/tests\/.*\.test\.tsx?$/u.test(id)) return null;
    const { output } = await build({
      configFile: false,
      logLevel: 'error',
      plugins: [ownAddress],
      ssr: { noExternal: true, external: ['vitest', 'fast-check'] },
      build: {
        ssr: id,
        write: false,
        minify: false,
        rolldownOptions: { output: { codeSplitting: false } },
      },
    });
    return drawnAlike(askedOnce(output[0].code));
  },
};

import { build } from 'vite';

const comments = /\/\*.*?\*\/|(^|\s)\/\/[^\n]*/gs;
// What the build replaces by a plain value is no harm.
// A part of ours that is loaded when it is wanted becomes part of the one script.
const onlyInModules =
  /\bimport\s*\((?!\s*['"]\.{1,2}\/)|\bimport\.meta\b(?!\.env\.(?:BASE_URL|DEV|PROD|MODE|SSR)\b)/;

/** Looks at each source, since the bundler turns `import.meta` silently into an empty object. */
const refuseWhatOnlyModulesCan = {
  name: 'refuse-what-only-modules-can',
  enforce: 'pre',
  transform(code, id) {
    if (id.endsWith('vite/preload-helper.js')) return; // nothing of it is left in one script
    const found = onlyInModules.exec(code.replace(comments, ''));
    if (found) throw new Error(`${id} has ${found[0]}, which a script opened from a disk cannot do.`);
  },
};

/**
 * One classic script that runs without a server, from an entry and all that it imports: a page that is opened from a
 * disk may not load modules.
 */
export async function bundleForDisk(entry) {
  const { output } = await build({
    configFile: false,
    logLevel: 'silent',
    base: './',
    plugins: [refuseWhatOnlyModulesCan],
    build: {
      write: false,
      modulePreload: false,
      rolldownOptions: { input: entry, output: { format: 'iife', codeSplitting: false } },
    },
  });
  const [script, ...rest] = output;
  if (rest.length > 0) throw new Error(`More than one file: ${rest.map((file) => file.fileName).join(', ')}`);
  return script.code;
}

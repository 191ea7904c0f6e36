/** The text of every file of the package, as it stands at the time of the build. */
const files = import.meta.glob<string>('../calculators/**/*.ts', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Names a subject: `src/calculators/advisor/opening-scale.ts` is the “advisor opening scale”. */
const subjectOf = (path: string): string =>
  path
    .replace(/^.*\/calculators\//u, '')
    .replace(/\.ts$/u, '')
    .replaceAll(/[-/]/gu, ' ');

const isList = (path: string): boolean => /\/calculators\/(?:constants|index\.ts)/u.test(path);

/** The files of the package that compute with a constant, by subject, in the order of their names; generated from their text. */
export function usesOf(constant: string): readonly string[] {
  const pattern = new RegExp(String.raw`\b${constant.replace('.', String.raw`\.`)}\b`, 'u');
  const [head = '', member] = constant.split('.');
  // A member may be taken apart from its object where it is defined; the file itself then stands for it.
  const definition = new RegExp(String.raw`^(?:export )?const ${head}\b`, 'mu');
  const paths = Object.keys(files).filter((path) => !isList(path));
  const using = paths.filter((path) => pattern.test(withoutComments(files[path] ?? '')));
  const others = using.filter((path) => !definition.test(files[path] ?? ''));
  const shown =
    others.length > 0
      ? others
      : member === undefined
        ? using
        : paths.filter((path) => definition.test(files[path] ?? ''));
  return [...new Set(shown.map(subjectOf))].toSorted();
}

const withoutComments = (text: string): string => text.replaceAll(/\/\*[^]*?\*\/|\/\/.*$/gmu, '');

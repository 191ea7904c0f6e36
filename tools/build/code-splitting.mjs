/*
 * Which modules reach a browser in one file. On a slow network the number of files costs more than their size, and each
 * alone packs badly. What is not named is split by who imports it.
 */
const under = (folder, names) => new RegExp(String.raw`[\\/]${folder}[\\/](?:${names})`, 'u');

export const codeSplitting = {
  groups: [
    { name: 'preact', test: /[\\/]node_modules[\\/]preact[\\/]|hydrate-island\.ts/u },
    { name: 'later', test: /preload-helper|arriving[\\/]Later\.tsx/u },
    {
      name: 'site',
      test: (id) =>
        id.includes('Page.astro?astro&type=script') ||
        under('device', 'late-styles|service-worker|site-address|site-foot|theme|trusted-addresses').test(id),
    },
    {
      name: 'figures',
      test: under(
        'calculators',
        'result|format-number|exact-definitions|format-pressure|pressure-unit|column-|number-in-words|quantities|unit-spelling|parse-measure|measure-|[a-z-]+-units\\.ts',
      ),
    },
    {
      name: 'form',
      test: (id) =>
        under('islands', 'calculator[\\\\/]').test(id) ||
        under('device', 'kept-form|fragment|clipboard|settings').test(id) ||
        under(
          'calculators',
          'calculator-|describe-problem|parse-number|plain-number|parse-quantity|parse-pressure|parse-choice|parse-ambient\\.ts',
        ).test(id),
    },
  ],
};

/*
 * Which modules reach a browser in one file. On a slow network the number of files costs more than their size, and each
 * alone packs badly. What is not named is split by who imports it.
 */
const under = (folder, names) => new RegExp(String.raw`[\\/]${folder}[\\/](?:${names})`, 'u');

export const codeSplitting = {
  groups: [
    {
      name: 'preact',
      test: /[\\/]node_modules[\\/]preact[\\/]|hydrate-island\.ts|ask-for-parts\.ts|preload-helper/u,
    },
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
        'result|once|with-article|format-number|exact-definitions|format-pressure|pressure-unit|column-|quantities|unit-spelling|parse-measure|measure-unit|(?!density|volume-flow)[a-z-]+-units\\.ts',
      ),
    },
    {
      name: 'form',
      test: (id) =>
        under('islands', 'calculator[\\\\/](?!AnswerRows|Warnings)').test(id) ||
        under('device', 'kept-form|fragment|clipboard|settings').test(id) ||
        under(
          'calculators',
          'calculator-(?!link)|parse-number|plain-number|parse-quantity|parse-pressure|parse-ambient\\.ts',
        ).test(id),
    },
    // What all calculators use but the unit converter, of which most is asked at once.
    {
      name: 'forms',
      test: (id) =>
        under('islands', 'calculator[\\\\/](?:AnswerRows|Warnings)').test(id) ||
        under('calculators', 'calculator-link|parse-choice|measure-limit|value-of-checked').test(id),
    },
    { name: 'problem-words', test: under('calculators', 'describe-problem|number-in-words') },
  ],
};

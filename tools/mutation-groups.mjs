const groups = {
  parsers: {
    mutate: [
      'src/calculators/{parse-number,parse-quantity,parse-pressure,parse-measure,calculator-link,session-link,reading-list}.ts',
    ],
    tests: [
      'tests/unit/{parse-number,parse-quantity,pressure-units,measure-units,calculator-link,session-link,typed-readings}.test.ts',
      'tests/property/{parse-number,session-link,measure-units}.test.ts',
      'tests/unit/normal.test.ts',
    ],
  },
};
export const testsOf = (name) => groups[name].tests;
export const filesOf = (name) => groups[name].mutate;

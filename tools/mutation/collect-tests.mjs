import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import * as chai from 'chai';

for (const part of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(part);

/**
 * As much of vitest as the tests of `src/calculators` use: `describe`, `it`, `test`, `each` and `expect`. Of a test that asks
 * for more nothing can be loaded, and the run ends before the first mutant.
 *
 * A test is known by its script, its number there and its name.
 *
 * @returns {{
 *   tests: { id: string, run: () => unknown }[],
 *   api: { inScript(name: string): void } & Pick<typeof import('vitest'), 'describe' | 'expect' | 'it' | 'test'>,
 * }}
 */
export function collectTests() {
  const tests = [];
  let script = '';
  let counted = 0;
  let place = [];

  const inScript = (name) => {
    script = name;
    counted = 0;
    place = [];
  };

  function describe(name, body) {
    const around = place;
    place = [...around, name];
    body();
    place = around;
  }

  function test(name, ...rest) {
    counted += 1;
    tests.push({
      id: [script, counted, ...place, name].join(separator),
      run: rest.find((argument) => typeof argument === 'function'),
    });
  }

  const withEach = (declare) =>
    Object.assign(declare, {
      each: (rows) => (name, body) => {
        for (const row of rows) declare(name, Array.isArray(row) ? () => body(...row) : () => body(row));
      },
    });

  withEach(test);
  const api = { inScript, describe: withEach(describe), it: test, test, expect: chai.expect };
  return { tests, api };
}

const separator = ' · ';

/** Script of a test. */
export const scriptOf = (id) => id.slice(0, id.indexOf(separator));

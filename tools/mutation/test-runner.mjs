import { globSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { Script } from 'node:vm';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import { DryRunStatus, TestStatus, toMutantRunResult } from '@stryker-mutator/api/test-runner';
import fastCheck from 'fast-check';
import { collectTests, scriptOf } from './collect-tests.mjs';
import { mutantSwitch } from './mutant-switch.mjs';

const require = createRequire(import.meta.url);

// Few inputs for each property: a mutant that only one in a thousand inputs shows is counted as missed.
process.env.PROPERTY_RUNS ??= '0.02';

// A mutant is caught or not by a test, never by the luck of a draw; nobody reads how small the input could be.
fastCheck.configureGlobal({ seed: 2100, numRuns: 25, endOnFailure: true });

/** A script that begins with tests, not one of what several of them use. */
const isOfTests = (name) => name.startsWith('tests-');

/**
 * Runs the scripts of bundle-tests.mjs anew for each mutant, in one process: what is computed while a file is loaded is
 * computed with the mutant. Runners of whole test programs start a worker for each, which takes ten times as long as the
 * tests.
 */
class ScriptRunner {
  /** By file name, as compiled once. @type {Map<string, Script>} */
  #scripts;
  /** Longest time that each test has taken so far; a failure ends early. */
  #milliseconds = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  init() {
    this.#scripts = new Map(
      globSync('reports/tests/*.cjs').map((filename) => [
        basename(filename),
        new Script(`(function (require, exports) {${readFileSync(filename, 'utf8')}\n})`, { filename }),
      ]),
    );
  }

  dryRun() {
    const mutants = mutantSwitch();
    mutants.takeHits();
    const { tests, failure } = this.#load(mutants);
    if (failure !== undefined) return { status: DryRunStatus.Error, errorMessage: failure };
    const mutantCoverage = { static: mutants.takeHits(), perTest: {} };
    const results = tests.map((test) => {
      const result = this.#resultOf(test);
      mutantCoverage.perTest[test.id] = mutants.takeHits();
      return result;
    });
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage };
  }

  mutantRun({ activeMutant, hitLimit, mutantActivation, testFilter, disableBail }) {
    const mutant = Number(activeMutant.id);
    const mutants = mutantSwitch(hitLimit);
    if (mutantActivation === 'static') mutants.activate(mutant);
    const { tests, failure } = this.#load(mutants, testFilter);
    mutants.activate(mutant);
    const results = [];
    for (const test of tests) {
      const result = this.#resultOf(test);
      results.push(result);
      if (mutants.hitLimitReached())
        return toMutantRunResult({ status: DryRunStatus.Timeout, reason: 'Hit limit reached.' });
      if (!disableBail && result.status === TestStatus.Failed) break;
    }
    return toMutantRunResult(
      failure !== undefined && results.every(({ status }) => status === TestStatus.Success)
        ? { status: DryRunStatus.Error, errorMessage: failure }
        : { status: DryRunStatus.Complete, tests: results },
    );
  }

  /**
   * Loads the scripts of the tests that are asked for, or all, and gives these tests, quickest first, and what was thrown
   * where a script could not be loaded.
   */
  #load(mutants, asked) {
    const wanted = asked === undefined ? undefined : new Set(asked);
    const scripts = asked?.map(scriptOf) ?? [...this.#scripts.keys()].filter(isOfTests);
    const { tests, api } = collectTests();
    const given = { vitest: api, 'fast-check': fastCheck, 'mutant-switch': mutants };
    const loaded = new Map();
    const load = (name) => {
      if (Object.hasOwn(given, name)) return given[name];
      const script = this.#scripts.get(basename(name));
      if (script === undefined) return require(name);
      if (!loaded.has(script)) {
        const exports = {};
        loaded.set(script, exports);
        try {
          script.runInThisContext()(load, exports);
        } catch (thrown) {
          loaded.delete(script);
          throw thrown;
        }
      }
      return loaded.get(script);
    };
    let failure;
    for (const name of new Set(scripts)) {
      try {
        load(name);
      } catch (thrown) {
        failure = `${name}: ${thrown}`;
      }
    }
    const quickestFirst = tests
      .filter(({ id }) => wanted?.has(id) ?? true)
      .toSorted((a, b) => this.#longest(a) - this.#longest(b));
    return { tests: quickestFirst, failure };
  }

  #longest = ({ id }) => this.#milliseconds.get(id) ?? 0;

  #resultOf({ id, run }) {
    const start = performance.now();
    let outcome = { status: TestStatus.Success };
    try {
      if (run() instanceof Promise) throw new Error('A test that takes its time is not waited for.');
    } catch (thrown) {
      outcome = { status: TestStatus.Failed, failureMessage: String(thrown) };
    }
    const timeSpentMs = performance.now() - start;
    this.#milliseconds.set(id, Math.max(timeSpentMs, this.#longest({ id })));
    return { id, name: id, timeSpentMs, ...outcome };
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'script', ScriptRunner)];

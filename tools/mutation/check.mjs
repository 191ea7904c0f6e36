// Reads the reports of the mutation run and says whether enough mutants were noticed.
import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { groups, isParser } from './groups.mjs';

/** Least share of the mutants that a test must notice, in per cent. */
const least = { parsers: 95, all: 90 };

/** Mutants that no test noticed, and all that could be run, of a list of files. */
function scoreOf(files) {
  const mutants = files.flatMap(([, { mutants }]) => mutants);
  const counted = mutants.filter(({ status }) => !['CompileError', 'RuntimeError'].includes(status));
  const missed = counted.filter(({ status }) => !['Killed', 'Timeout'].includes(status));
  return {
    mutants: counted.length,
    missed: missed.length,
    percent: counted.length === 0 ? 0 : (100 * (counted.length - missed.length)) / counted.length,
  };
}

/**
 * Prints a line a group and the files with most mutants missed; true if both bounds are kept in the groups that are asked
 * for, and nothing was left out of them.
 */
export function checkMutation(asked) {
  const all = [];
  for (const group of asked) {
    const [report] = globSync(`reports/mutation/${group}.json`);
    if (report === undefined) {
      console.error(`No report of the group “${group}”: run \`npm run test:mutation -- ${group}\`.`);
      return false;
    }
    const files = Object.entries(JSON.parse(readFileSync(report, 'utf8')).files);
    const { percent, mutants, missed } = scoreOf(files);
    console.log(`${percent.toFixed(1).padStart(6)} %  ${group}: ${mutants} mutants, ${missed} missed`);
    all.push(...files);
  }
  for (const file of all) {
    const { percent, missed } = scoreOf([file]);
    if (percent < least.all)
      console.log(`        ${basename(file[0])}: ${missed} missed, ${percent.toFixed(1)} %`);
  }
  const parsers = scoreOf(all.filter(([file]) => isParser(file)));
  const enoughOfParsers = parsers.mutants === 0 || parsers.percent >= least.parsers;
  const whole = scoreOf(all);
  const ignored = all
    .flatMap(([, { mutants }]) => mutants)
    .filter(({ status }) => status === 'Ignored').length;
  console.log(`Parsers: ${parsers.percent.toFixed(2)} % of ${parsers.mutants} (at least ${least.parsers})`);
  console.log(
    `All: ${whole.percent.toFixed(2)} % of ${whole.mutants} (at least ${least.all}); ${ignored} switched off`,
  );
  return enoughOfParsers && whole.percent >= least.all && ignored === 0;
}

if (import.meta.main ?? process.argv[1] === import.meta.filename)
  process.exitCode = checkMutation(Object.keys(groups)) ? 0 : 1;

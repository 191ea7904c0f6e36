import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;
const path = [join(root, 'node_modules', '.bin'), process.env.PATH].join(delimiter);

/** Runs a command to its end. `live` shows its words at once; else they come in one piece, with its name. */
function run(command, args, { env, live }) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, PATH: path, ...env },
      stdio: ['ignore', live ? 'inherit' : 'pipe', live ? 'inherit' : 'pipe'],
      shell: process.platform === 'win32',
    });
    const words = [];
    child.stdout?.on('data', (chunk) => words.push(chunk));
    child.stderr?.on('data', (chunk) => words.push(chunk));
    child.on('error', (error) => resolve({ code: 1, words: error.message }));
    child.on('close', (code) => resolve({ code: code ?? 1, words: Buffer.concat(words).toString() }));
  });
}

function readReport(file, count) {
  try {
    return count(JSON.parse(readFileSync(join(root, file), 'utf8')));
  } catch {
    return { passed: 0, failed: 0 }; // no report: the runner broke, which is counted below
  }
}

/**
 * One step: a check that passes or fails as a whole, or, with `report`, a runner that counts its own tests.
 * A runner that ends with an error, or that ran nothing, counts as one failure even if it named none.
 */
export async function runStep({ name, command, args, env = {}, live = false, report, count }) {
  const started = performance.now();
  if (report) rmSync(join(root, report), { force: true });
  if (live) console.log(`\n── ${name}`);
  const { code, words } = await run(command, args, { env, live });
  let result = { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 };
  if (report) {
    result = readReport(report, count);
    const isBroken = code !== 0 || result.passed + result.failed === 0;
    if (isBroken && result.failed === 0) result.failed = 1;
  }
  const seconds = (performance.now() - started) / 1000;
  if (!live) console.log(`\n── ${name}\n${words.trimEnd()}`);
  return { name, ...result, seconds, words };
}

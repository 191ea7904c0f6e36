// The calculators alone, as a package for other programs: ESM and types, nothing else needed. Into OUT_DIR (dist-package).
import './check-node.mjs';
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { listFiles } from './build/list-files.mjs';

const root = new URL('..', import.meta.url).pathname;
const folder = resolve(root, process.env.OUT_DIR ?? 'dist-package');
const own = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
execFileSync(
  process.execPath,
  [
    join(root, 'node_modules/typescript/bin/tsc'),
    '-p',
    join(root, 'tools/package.tsconfig.json'),
    '--outDir',
    folder,
  ],
  { stdio: 'inherit' },
);

// The compiler rewrites imports in the code and leaves them in the types.
const types = listFiles(folder).filter((file) => file.endsWith('.d.ts'));
for (const file of types) {
  const text = readFileSync(join(folder, file), 'utf8');
  writeFileSync(join(folder, file), text.replace(/(from '\.{1,2}\/[^']+)\.ts'/g, "$1.js'"));
}

cpSync(join(root, 'LICENSE'), join(folder, 'LICENSE'));
writeFileSync(
  join(folder, 'README.md'),
  `# ${own.name}-calculators

The computation behind Evendraw: units of pressure and what people type for them, statistics of readings, the advice for
the next turn of a balance screw. Pure: no DOM, network, clock or randomness. Every public function returns a \`Result\`
or says in its types why it cannot fail.

\`\`\`js
import { parsePressure, inUnit, pressureUnit } from '${own.name}-calculators';
const parsed = parsePressure('9 1/2 inHg', pressureUnit('kPa'));
if (parsed.ok) console.log(inUnit(parsed.value.pascals, pressureUnit('mmHg'))); // 241.3
\`\`\`
`,
);
writeFileSync(
  join(folder, 'package.json'),
  `${JSON.stringify(
    {
      name: `${own.name}-calculators`,
      version: own.version,
      description: own.description,
      license: own.license,
      type: 'module',
      sideEffects: false,
      engines: { node: '>=20' },
      exports: { '.': { types: './index.d.ts', default: './index.js' } },
      types: './index.d.ts',
    },
    null,
    2,
  )}\n`,
);
console.log(`Built ${folder}: ${types.length} modules with their types, no dependencies.`);

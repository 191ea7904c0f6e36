import { describe, expect, it } from 'vitest';
import { importsOf, sourceFiles } from './source-tree.ts';

const layers = [
  'pages',
  'layouts',
  'components',
  'islands',
  'content',
  'drawing',
  'device',
  'calculators',
  'styles',
] as const;
type Layer = (typeof layers)[number];

/** Who may import whom, and which packages. */
const mayImport: Record<Layer, { layers: Layer[]; packages: RegExp }> = {
  pages: {
    layers: [
      'pages',
      'layouts',
      'components',
      'islands',
      'content',
      'drawing',
      'device',
      'calculators',
      'styles',
    ],
    packages: /^astro(:|$)/,
  },
  layouts: { layers: ['layouts', 'components', 'content', 'device', 'styles'], packages: /^astro(:|$)/ },
  components: {
    layers: ['components', 'islands', 'content', 'drawing', 'device', 'calculators'],
    packages: /^(astro(:|$)|katex$)/,
  },
  // The words of the handbook set components and explorables among them; the facts import nothing but facts.
  content: { layers: ['components', 'islands', 'content', 'calculators'], packages: /^astro(:|\/|$)/ },
  islands: { layers: ['islands', 'calculators', 'drawing', 'device'], packages: /^preact(\/hooks)?$/ },
  drawing: { layers: ['drawing', 'calculators'], packages: /^$/ },
  device: { layers: ['device', 'calculators'], packages: /^(idb|minisearch|uqr|valibot)$/ },
  calculators: { layers: ['calculators'], packages: /^$/ },
  styles: { layers: [], packages: /^$/ },
};

function layerOf(path: string): Layer | undefined {
  if (path.startsWith('src/components/islands/')) return 'islands';
  if (path === 'src/content.config.ts') return 'content';
  return layers.find((layer) => path.startsWith(`src/${layer}/`));
}

const files = sourceFiles('src').filter(({ path }) => !path.endsWith('.json') && !path.endsWith('.d.ts'));
const isAllowed = (from: string, imported: string): boolean => {
  const layer = layerOf(from);
  if (!layer) return false;
  if (imported === 'package.json') return layer === 'device'; // for the version
  const target = layerOf(imported);
  return target ? mayImport[layer].layers.includes(target) : mayImport[layer].packages.test(imported);
};

describe('layers', () => {
  it('every source file belongs to one', () => {
    expect(files.filter(({ path }) => !layerOf(path)).map(({ path }) => path)).toEqual([]);
  });

  it('no file imports what its layer may not', () => {
    let seen = 0;
    const faults = files.flatMap((file) =>
      importsOf(file).flatMap((imported) => {
        seen += 1;
        return isAllowed(file.path, imported) ? [] : [`${file.path} imports ${imported}`];
      }),
    );
    expect(faults).toEqual([]);
    expect(seen).toBeGreaterThan(100);
  });

  it.each([
    ['src/calculators/a.ts', 'src/device/clock.ts', false],
    ['src/calculators/a.ts', 'preact', false],
    ['src/calculators/a.ts', 'node:fs', false],
    ['src/drawing/a.ts', 'src/device/clock.ts', false],
    ['src/device/a.ts', 'src/components/islands/Search.tsx', false],
    ['src/components/islands/A.tsx', 'src/components/SiteHead.astro', false],
    ['src/components/islands/A.tsx', 'src/content/sources.ts', false],
    ['src/components/islands/A.tsx', 'src/calculators/index.ts', true],
    ['src/pages/a.astro', 'src/layouts/Page.astro', true],
    ['src/layouts/A.astro', 'src/pages/a.astro', false],
    ['src/elsewhere/a.ts', 'src/calculators/index.ts', false],
  ])('%s importing %s: %s', (from, imported, allowed) => {
    expect(isAllowed(from, imported)).toBe(allowed);
  });

  it('reads the imports of every kind of file', () => {
    const of = (path: string, text: string) => importsOf({ path, text });
    expect(of('src/drawing/a.ts', "import type { B } from '../calculators/b.ts';")).toEqual([
      'src/calculators/b.ts',
    ]);
    expect(of('src/device/a.ts', "export * from './b.ts'; const c = import('./c.ts');")).toEqual([
      'src/device/b.ts',
      'src/device/c.ts',
    ]);
    expect(
      of(
        'src/pages/a.astro',
        "---\nimport A from '../layouts/A.astro';\n---\n<A />\n<script>import '../device/b.ts';</script>",
      ),
    ).toEqual(['src/layouts/A.astro', 'src/device/b.ts']);
    expect(
      of(
        'src/content/a.mdx',
        "---\ntitle: a\n---\nimport A from '../components/A.astro';\n\nAn import from 'x'.",
      ),
    ).toEqual(['src/components/A.astro']);
    expect(of('src/layouts/A.astro', "---\nimport a from '../device/a.js?raw';\n---\n")).toEqual([
      'src/device/a.js',
    ]);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleSessions, generations, nextStep } from '../../src/calculators/index.ts';
import { beforeStart } from '../../src/content/before-start.ts';
import { handbookSections, originMarks } from '../../src/content/handbook-sections.ts';
import { sources } from '../../src/content/sources.ts';
import { benchFigures } from '../../src/drawing/bench-figures.ts';
import { linkageDrawings } from '../../src/drawing/linkages.ts';

/** Longest sentence of a page, in words: longer ones are not read at a running engine. */
const longestSentence = 40;

const folder = new URL('../../src/content/handbook/', import.meta.url);

type HandbookPage = { slug: string; front: Map<string, string>; body: string; prose: string };

const pages: HandbookPage[] = readdirSync(folder)
  .filter((name) => name.endsWith('.mdx'))
  .map((name) => {
    const [, head = '', body = ''] =
      /^---\n(.*?)\n---\n(.*)$/s.exec(readFileSync(new URL(name, folder), 'utf8')) ?? [];
    const front = new Map(
      onOneLine(head)
        .split('\n')
        .map((line): [string, string] => {
          const colon = line.indexOf(':');
          return [line.slice(0, colon), line.slice(colon + 1).trim()];
        }),
    );
    return {
      slug: name.slice(0, -'.mdx'.length),
      front,
      body,
      prose: proseOf(`${front.get('answer')}\n\n${body}`),
    };
  });

/** A list of the front matter that runs over several lines, on one. */
function onOneLine(head: string): string {
  return head.replace(/:\s*\[[^\]]*\]/gu, (list) =>
    list
      .replace(/,?\s*\n\s*\]/u, ']')
      .replace(/\s+/gu, ' ')
      .replace('[ ', '['),
  );
}

const listOf = (page: HandbookPage, field: string): string[] =>
  (page.front.get(field) ?? '')
    .replace(/^\[|\]$/gu, '')
    .split(',')
    .map((word) => word.trim())
    .filter(Boolean);

/** What is read as running text: no imports, no formulae, no tags, no tables' rules, no link addresses. */
function proseOf(text: string): string {
  return text
    .replace(/^import .*$/gmu, '')
    .replace(/\$\$.*?\$\$/gsu, '')
    .replace(/<[^>]*>/gu, '\n')
    .replace(/\]\([^)]*\)/gu, ']')
    .replace(/^\s*(?:[-#|]|\d+\.).*$/gmu, (line) => `\n${line.replace(/[-#|]|^\s*\d+\./gu, '\n')}\n`);
}

const sentencesOf = (prose: string): string[] =>
  prose
    .split(/\n\s*\n/u)
    .flatMap((paragraph) => paragraph.split(/(?<=[.?:])\s+(?=[\p{Lu}*“])/u))
    .map((sentence) => sentence.replace(/\s+/gu, ' ').trim())
    .filter(Boolean);

const words = (sentence: string): number =>
  sentence.split(' ').filter((word) => /[\p{L}\d]/u.test(word)).length;

const everyText = [
  ...pages.map(({ slug, prose }) => ({ slug, text: prose })),
  { slug: 'index', text: homeText() },
];

function homeText(): string {
  return readFileSync(new URL('../../src/pages/index.astro', import.meta.url), 'utf8');
}

describe('the handbook', () => {
  it('has pages to test', () => {
    expect(pages.length).toBeGreaterThanOrEqual(14);
  });

  it.each(pages)('$slug opens with an answer of one or two sentences', ({ front }) => {
    const answer = front.get('answer') ?? '';
    const count = answer.split(/[.?](?:\s|$)/u).filter(Boolean).length;
    expect(answer.length).toBeGreaterThan(40);
    expect(count).toBeGreaterThanOrEqual(1);
    expect(count).toBeLessThanOrEqual(2);
  });

  it.each(pages)('$slug says when it was last reviewed', ({ front }) => {
    expect(front.get('reviewed')).toMatch(/^20\d\d-\d\d-\d\d$/u);
  });

  it.each(pages)('$slug belongs to a known section and marks known origins', (page) => {
    expect(Object.keys(handbookSections)).toContain(page.front.get('section'));
    expect(Object.keys(originMarks)).toEqual(expect.arrayContaining(listOf(page, 'origins')));
  });

  it.each(pages)('$slug lists known sources and cites only what it lists', (page) => {
    const listed = listOf(page, 'sources');
    const cited = [...page.body.matchAll(/<From id="([^"]+)"/gu)].map(([, id]) => id);
    expect(listed.length).toBeGreaterThan(0);
    expect(Object.keys(sources)).toEqual(expect.arrayContaining(listed));
    expect(listed).toEqual(expect.arrayContaining(cited));
  });

  it.each(pages)('$slug cites every document that it lists', (page) => {
    const documents = listOf(page, 'sources').filter(
      (id) => sources[id as keyof typeof sources].seen !== 'own',
    );
    for (const id of documents) expect(page.body).toContain(`<From id="${id}"`);
  });

  it('uses every source of the bibliography on some page', () => {
    const listed = new Set(pages.flatMap((page) => listOf(page, 'sources')));
    // Calculators name theirs in the page itself; the page of the constants, in the list of them.
    const others = ['../../src/pages/', '../../src/calculators/constants/']
      .map((path) => new URL(path, import.meta.url))
      .flatMap((path) => readdirSync(path).map((name) => readFileSync(new URL(name, path), 'utf8')))
      .join('\n');
    const cited = Object.keys(sources).filter(
      (id) => listed.has(id) || new RegExp(`(?:sources\\.${id}\\b|'${id}')`, 'u').test(others),
    );
    expect(cited).toEqual(Object.keys(sources));
    expect([...listed].filter((id) => !Object.hasOwn(sources, id))).toEqual([]);
  });

  it.each(pages)('$slug has no exclamation mark and no sentence longer than the bound', ({ prose, slug }) => {
    const sentences = sentencesOf(prose);
    const longest = sentences.reduce(
      (most, sentence) => (words(sentence) > words(most) ? sentence : most),
      '',
    );
    expect(sentences.length).toBeGreaterThan(3);
    expect(prose).not.toContain('!');
    expect(words(longest), `${slug}: ${longest}`).toBeLessThanOrEqual(longestSentence);
  });

  it.each(pages)('$slug links only to pages that exist', ({ body }) => {
    const others = readdirSync(new URL('../../src/pages/', import.meta.url)).map((name) =>
      name.replace('.astro', ''),
    );
    const known = [...pages.map(({ slug }) => slug), ...others];
    const linked = [...body.matchAll(/(?:\]\(|to=")\/([a-z-]+)\//gu)].map(([, slug]) => slug);
    expect(known).toEqual(expect.arrayContaining(linked));
  });
});

describe('cautions', () => {
  const guarded = pages.filter(({ body }) => /^1\. /mu.test(body));

  it('guards the pages with steps', () => {
    expect(guarded.length).toBeGreaterThanOrEqual(7);
  });

  it.each(guarded)('stand before the first step of $slug', ({ body }) => {
    const caution = body.search(/<(?:BeforeStart|Caution)[ />]/u);
    expect(caution).toBeGreaterThan(-1);
    expect(caution).toBeLessThan(body.search(/^1\. /mu));
  });

  it.each(guarded.filter(({ body }) => /^\d\. .*\b(?:[Ww]arm the engine|[Ss]tart the engine)/mu.test(body)))(
    'about exhaust, heat and moving parts stand before the step of $slug that starts the engine',
    ({ body }) => {
      expect(body.indexOf('<BeforeStart />')).toBeGreaterThan(-1);
      expect(body.indexOf('<BeforeStart />')).toBeLessThan(
        body.search(/^\d\. .*\b(?:[Ww]arm the engine|[Ss]tart the engine)/mu),
      );
    },
  );

  it('name exhaust, heat, fuel and moving parts', () => {
    const hazards = beforeStart.map(({ hazard }) => hazard).join(' ');
    for (const word of ['Exhaust', 'Heat', 'fuel', 'Moving parts']) expect(hazards).toContain(word);
  });

  it.each(everyText)('$slug never calls a running engine indoors safe', ({ text }) => {
    const claims = sentencesOf(text).filter((sentence) =>
      /\b(?:safe|safely|harmless|no danger|acceptable)\b/iu.test(sentence),
    );
    const ours = claims.filter((sentence) =>
      /indoor|room|garage|inside|minutes?|door|window|ventilat/iu.test(sentence),
    );
    for (const sentence of ours) expect(sentence).toMatch(/\b(?:no|not|never)\b/iu);
    expect(text).not.toMatch(/safe (?:to run )?indoors|safe for \d|safe time|safe below/iu);
  });

  it('finds such a claim where one is planted', () => {
    expect('It is safe indoors with the door open.').toMatch(/safe (?:to run )?indoors/iu);
  });
});

describe('every generation', () => {
  it.each(generations)('%s has a page, a drawing and a link that sets the session up', (generation) => {
    const page = pages.find(({ slug }) => slug === generation);
    expect(page?.body).toMatch(new RegExp(`<LinkageDrawing\\s+generation="${generation}"`, 'u'));
    expect(page?.body).toContain(`<FilledExample generation="${generation}" />`);
    expect(page?.body).toMatch(new RegExp(`/bench-session/#v=1&g=${generation}&n=\\d`, 'u'));
    expect(pages.find(({ slug }) => slug === 'which-linkage')?.body).toContain(`'${generation}'`);
  });

  it.each(Object.entries({ ...linkageDrawings, ...benchFigures }))(
    '%s is drawn, titled and lettered',
    (_, figure) => {
      const [, , width = 0, height = 0] = figure.viewBox.split(' ').map(Number);
      expect(figure.paths.length).toBeGreaterThan(8);
      expect(figure.title.length).toBeGreaterThan(60);
      expect(new Set(figure.callouts.map(({ letter }) => letter)).size).toBe(figure.callouts.length);
      for (const { x, y, words: said } of figure.callouts) {
        expect(said.length).toBeGreaterThan(4);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThan(width - 6);
        expect(y).toBeLessThanOrEqual(height);
      }
      for (const { d } of figure.paths) expect(d).not.toMatch(/NaN|undefined/u);
    },
  );

  it.each(Object.values(exampleSessions))(
    '$generation: its example ends within, inside the thread',
    (example) => {
      const result = nextStep(example.setUp, example.events);
      expect(result.ok && result.value.step.kind).toBe('done');
      const left = result.ok ? result.value.estimate.turnsLeft : [];
      expect(left).toHaveLength(example.setUp.screws.length);
      for (const turns of left) {
        expect(turns?.closing).toBeGreaterThan(0);
        expect(turns?.opening).toBeGreaterThan(0);
      }
    },
  );
});

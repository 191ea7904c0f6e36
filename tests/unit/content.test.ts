import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleSessions, generations, nextStep } from '../../src/calculators/index.ts';
import { beforeStart } from '../../src/content/before-start.ts';
import { glossary, type GlossaryTerm } from '../../src/content/glossary.ts';
import { handbookSections, originMarks } from '../../src/content/handbook-sections.ts';
import { sources } from '../../src/content/sources.ts';
import { benchFigures } from '../../src/drawing/bench-figures.ts';
import { carburettorFigures } from '../../src/drawing/carburettor-figures.ts';
import { engineFigures } from '../../src/drawing/engine-figures.ts';
import { linkagePath } from '../../src/drawing/linkage-path.ts';
import { linkageDrawings } from '../../src/drawing/linkages.ts';
import { bareFigures, figuresIn, givenFigures } from '../handbook/figures.ts';
import {
  handbookPages as pages,
  listOf,
  longestOf,
  paragraphsOf,
  sentencesOf,
  wordsIn,
} from '../handbook/pages.ts';

/** Longest sentence of a page, in words: longer ones are not read at a running engine. */
const longestSentence = 40;

/** Longest paragraph of a page, in words: about ten lines on a phone. */
const longestParagraph = 100;

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
    const others = ['../../src/pages/', '../../src/content/tables/', '../../src/calculators/constants/']
      .map((path) => new URL(path, import.meta.url))
      .flatMap((path) =>
        readdirSync(path, { withFileTypes: true })
          .filter((entry) => entry.isFile())
          .map(({ name }) => readFileSync(new URL(name, path), 'utf8')),
      )
      .join('\n');
    const cited = Object.keys(sources).filter(
      (id) => listed.has(id) || new RegExp(`(?:sources\\.${id}\\b|'${id}')`, 'u').test(others),
    );
    expect(cited).toEqual(Object.keys(sources));
    expect([...listed].filter((id) => !Object.hasOwn(sources, id))).toEqual([]);
  });

  it.each(pages)('$slug has no exclamation mark and no sentence longer than the bound', ({ prose, slug }) => {
    const sentences = sentencesOf(prose);
    const longest = longestOf(sentences);
    expect(sentences.length).toBeGreaterThan(3);
    expect(prose).not.toContain('!');
    expect(wordsIn(longest), `${slug}: ${longest}`).toBeLessThanOrEqual(longestSentence);
  });

  it.each(pages)('$slug has no paragraph longer than the bound', ({ prose, slug }) => {
    const longest = longestOf(paragraphsOf(prose));
    expect(wordsIn(longest), `${slug}: ${longest}`).toBeLessThanOrEqual(longestParagraph);
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

describe('questions that people ask', () => {
  const asked = pages.flatMap((page) => listOf(page, 'asks'));

  it('are claimed by one page each, in their own words', () => {
    expect(asked.length).toBeGreaterThan(pages.length / 2);
    expect(asked.filter((question, place) => asked.indexOf(question) !== place)).toEqual([]);
    for (const question of asked) expect(question).toMatch(/^[^.!?]{8,70}$/u);
  });
});

describe('figures with a unit', () => {
  it.each(pages)('$slug gives each one an origin', (page) => {
    expect(bareFigures(page)).toEqual([]);
  });

  it.each(pages)(
    '$slug quotes only sources that it lists, and says so where it quotes from memory',
    (page) => {
      const quoted = givenFigures(page.body).filter(({ component }) => component === 'Quoted');
      const from = new Set(quoted.map(({ source }) => source));
      if (from.delete('memory')) {
        expect(listOf(page, 'origins')).toContain('memory');
        expect(page.prose).toContain('from memory');
      }
      expect(listOf(page, 'sources')).toEqual(expect.arrayContaining([...from]));
    },
  );

  it('are given on most pages', () => {
    const giving = pages.filter(({ body }) => givenFigures(body).length > 0);
    expect(giving.length).toBeGreaterThan(pages.length / 2);
  });

  it.each([
    ['Read at 2000 to 2500 rpm.', '2000 to 2500 rpm'],
    ['Within 10\u00a0mmHg of each other', '10 mmHg'],
    ['a tenth, 0.1 turn, is kept', '0.1 turn'],
    ['turn it 1/4 of a turn out', '1/4 of a turn'],
    ['mercury of 13\u202f595.1\u00a0kg/m³', '13 595.1 kg/m³'],
    ['at −5 °C or so', '−5 °C'],
    ['a 5-minute wait', '5-minute'],
    ['11 to 16 % of the sets', '11 to 16 %'],
    ['in 28 m³ of air', '28 m³'],
  ])('are seen in “%s”', (text, expected) => {
    expect(figuresIn(text)).toEqual([expected]);
    expect(bareFigures({ body: text, front: new Map() })).toEqual([expected]);
    expect(bareFigures({ body: `<Quoted source="practice">${text}</Quoted>`, front: new Map() })).toEqual([]);
    expect(bareFigures({ body: `<Value>${text}</Value>`, front: new Map() })).toEqual([
      text.replace(/\s/gu, ' '),
    ]);
    expect(bareFigures({ body: '', front: new Map([['answer', text]]) })).toEqual([expected]);
  });

  it.each(['Carburettor 1 sits left', 'four carburettors', 'M5 and A4', 'class 1.6', 'in 2021, 400 sets'])(
    'are not seen in “%s”',
    (text) => expect(figuresIn(text)).toEqual([]),
  );
});

describe('the glossary', () => {
  const terms = Object.entries(glossary as Record<string, GlossaryTerm>);

  it.each(terms)('%s is a short explanation under a name of its own', (id, { term, words }) => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/u);
    expect(words).toMatch(/^\p{Lu}.*\.$/u);
    expect(sentencesOf(words).length).toBeLessThanOrEqual(3);
    expect(wordsIn(words)).toBeLessThanOrEqual(longestSentence);
    expect(terms.filter(([, other]) => other.term === term)).toHaveLength(1);
  });

  const linksOf = ({ body }: { body: string }) =>
    [...body.matchAll(/<Term\s+id="([^"]+)"/gu)].map(([, id]) => id);

  it.each(pages)('$slug links only terms that it holds', (page) => {
    expect(Object.keys(glossary)).toEqual(expect.arrayContaining(linksOf(page)));
  });

  it('is used by most pages', () => {
    expect(pages.filter((page) => linksOf(page).length > 0).length).toBeGreaterThan(pages.length / 2);
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

  it.each(
    Object.entries({
      ...linkageDrawings,
      ...benchFigures,
      ...engineFigures,
      ...carburettorFigures,
      linkagePath,
    }),
  )('%s is drawn, titled and lettered', (_, figure) => {
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
  });

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

import { describe, expect, it, test } from 'vitest';
import {
  answerChecklists,
  blockLengthLimit,
  checklist,
  checklistCode,
  checklistFields,
  checklistKinds,
  checklistNumbers,
  checklistTitle,
  checklistVersion,
  codeLengthLimit,
  describeProblem,
  generations,
  headingLimit,
  initialForm,
  isChecklistLink,
  linesOf,
  namesChecklist,
  notesLimit,
  parseChecklistLink,
  plainLine,
  plainLines,
  sayProblem,
  writeChecklistLink,
} from '../../src/calculators/index.ts';
import type { ChecklistChoice, ChecklistForm } from '../../src/calculators/index.ts';
import { checksumOf } from '../../src/device/checksum.ts';
import { qrModules } from '../../src/device/qr-code.ts';
import { qrPath } from '../../src/drawing/qr-path.ts';
import { readQr } from '../second-formula/qr-reader.ts';

/** So many characters stand beside a box on half a sheet, name and answer together. */
const lineLengthLimit = 46;

const choices: ChecklistChoice[] = checklistKinds.flatMap((list) =>
  generations.flatMap((generation) =>
    checklistNumbers.map((number) => ({ list, generation, carburettors: Number(number) })),
  ),
);
const blocksOf = (choice: ChecklistChoice) => checklist(choice).columns.flat();
const form = (part: Partial<ChecklistForm> = {}): ChecklistForm => ({
  ...initialForm(checklistFields),
  ...part,
});
const described = (part: Partial<ChecklistForm> = {}) => {
  const answered = answerChecklists(form(part));
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.answer;
};

describe('checklist(choice)', () => {
  it('there is a list for every kind of linkage and 2 to 8 carburettors, and its tools', () => {
    expect(choices).toHaveLength(2 * 5 * 7);
    expect(new Set(choices.map(checklistTitle)).size).toBe(choices.length);
  });

  it.each(choices)(
    '$list, $generation, $carburettors: blocks are short, lines have a name and an answer',
    (choice) => {
      const blocks = blocksOf(choice);
      expect(blocks.length).toBe(3);
      const lines = blocks.flatMap(linesOf);
      expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
      for (const block of blocks) {
        expect(linesOf(block).length).toBeGreaterThan(3);
        expect(linesOf(block).length).toBeLessThanOrEqual(blockLengthLimit);
      }
      for (const { id, item, answer } of lines) {
        expect(id).toMatch(/^[a-z-]+$/u); // ticks are kept as a list of them
        expect(item).toMatch(/^\p{Lu}/u);
        expect(answer).not.toMatch(/^(?:ok|checked|done)$|!/u);
        expect((item + answer).length, `${item} … ${answer}`).toBeLessThanOrEqual(lineLengthLimit);
      }
    },
  );

  it.each(choices.filter(({ list }) => list === 'work'))(
    '$generation, $carburettors: the exhaust comes first, and nobody starts the engine before the hold point',
    (choice) => {
      const [before, during, after] = blocksOf(choice);
      expect(before?.id).toBe('before');
      expect(linesOf(before!)[0]).toEqual({
        id: 'exhaust',
        item: 'Exhaust',
        answer: 'outdoors, or extractor on the pipe',
      });
      expect(before?.parts.at(-1)?.hold).toMatch(/^Hold\. All \w+ ticked, or the engine is not started\.$/u);
      expect(linesOf(before!).some(({ answer }) => /running|warm/u.test(answer))).toBe(false);
      expect(during?.parts.at(-1)?.hold).toMatch(/^Hold\. .*within the tolerance.*twice in a row\.$/u);
      // The machine is not ridden before its throttle shuts.
      expect(after?.parts[0]?.hold).toMatch(/throttle snaps shut/u);
      expect(after?.parts[1]?.lines.map(({ id }) => id)).toEqual(['road', 'next-day']);
    },
  );

  it.each(choices)('$list, $generation, $carburettors: never calls a place indoors safe', (choice) => {
    const text = JSON.stringify(checklist(choice));
    expect(text).not.toMatch(/\bsafe|indoors|garage/iu);
    expect(text).toMatch(/outdoors, or extractor on the pipe/u);
  });

  it('counts what is there', () => {
    const work = { list: 'work', generation: 'paired-screws' } as const;
    const first = (carburettors: number) =>
      linesOf(blocksOf({ ...work, carburettors })[1]!).find(({ id }) => id === 'first')?.item;
    expect(first(2)).toBe('First readings, 1 and 2');
    expect(first(6)).toBe('First readings, 1 to 6');
    const order = (carburettors: number) =>
      linesOf(blocksOf({ ...work, carburettors })[1]!).find(({ id }) => id === 'order')?.answer;
    expect([2, 3, 4, 5, 6].map(order)).toEqual([
      undefined,
      '1 and 3, each to 2',
      'each pair, then pair to pair',
      'as the manual groups them',
      'each pair, then pair to pair',
    ]);
    expect(JSON.stringify(blocksOf({ ...work, carburettors: 2 }))).toContain('until both read');
    expect(JSON.stringify(blocksOf({ ...work, carburettors: 4 }))).toContain('until all four read');
  });

  it('no line changes without a new version: paper with the old one hangs in workshops', () => {
    const sum = checksumOf(JSON.stringify(choices.map((choice) => checklist(choice))));
    expect({ [checklistVersion]: sum }, 'raise checklistVersion and checklistDate with it').toEqual({
      '1.0': '52958272',
    });
  });

  it('the hold point before the start names the number of lines before it', () => {
    for (const choice of choices.filter(({ list }) => list === 'work')) {
      const [before] = blocksOf(choice);
      expect(before?.parts).toHaveLength(1);
      expect(before?.parts[0]?.lines).toHaveLength(10);
      expect(before?.parts[0]?.hold).toContain('All ten ticked');
    }
  });

  it('paper has a place for everything that a line asks to be written', () => {
    for (const choice of choices) {
      const { blanks, record, list } = checklist(choice);
      const answers = blocksOf(choice)
        .flatMap(linesOf)
        .map(({ answer }) => answer);
      expect(record === null).toBe(list === 'tools');
      if (record) expect(record.columns).toHaveLength(5);
      expect(answers.includes('number written above')).toBe(blanks.some((blank) => /number$/u.test(blank)));
      if (list === 'work') expect(blanks.slice(0, 4)).toEqual(['Engine', 'Date', 'Gauge', 'Speed (rpm)']);
    }
  });
});

describe('answerChecklists(form)', () => {
  it('names the list, its version and its date', () => {
    expect(described()).toMatchObject({
      id: 'all-adjustable-4',
      title: 'Four carburettors, an adjuster on each',
      heading: 'Four carburettors, an adjuster on each',
      hasOwnHeading: false,
      name: 'all-adjustable, 4',
      edition: `version ${checklistVersion}, 25 November 2026`,
      otherEdition: null,
    });
    expect(described({ list: 'tools', generation: 'bypass-screws', carburettors: '2' })).toMatchObject({
      id: 'tools-bypass-screws-2',
      title: 'Tools for two throttle bodies, an air screw each',
    });
  });

  it('sets a club’s heading and notes as plain text', () => {
    expect(described({ heading: '  Spring\u202E evening ', notes: 'One\n\n<b>two</b>\u0000' })).toMatchObject(
      {
        heading: 'Spring evening',
        hasOwnHeading: true,
        notes: ['One', '<b>two</b>'],
      },
    );
  });

  it('says so where the paper that led here is of another version', () => {
    expect(described({ printed: checklistVersion }).otherEdition).toBeNull();
    expect(described({ printed: '0.9' }).otherEdition).toBe(
      `The paper that led here is version “0.9” of this list; this is version ${checklistVersion}. Use the newer of the two.`,
    );
  });

  it.each([
    ['heading', 'x'.repeat(headingLimit + 1), `Give at most ${headingLimit} characters; there are 61.`],
    ['notes', 'x'.repeat(notesLimit + 5), `Give at most ${notesLimit} characters; there are 245.`],
    ['carburettors', '9', 'Give 2, 3, 4, 5, 6, 7 or 8; you wrote “9”.'],
    ['generation', '<script>', 'separate-cables, all-adjustable, '],
    ['list', '', 'Give work or tools'],
  ] as const)('%s “%s” has its sentence', (field, text, sentence) => {
    const answered = answerChecklists(form({ [field]: text }));
    expect(answered).toMatchObject({ ok: false, problems: [{ field }] });
    expect(!answered.ok && answered.problems.map(sayProblem)[0]?.sentence).toContain(sentence);
  });
});

describe('writeChecklistLink(form) and parseChecklistLink(record)', () => {
  it('always says which list, and a club’s words where there are any', () => {
    expect(writeChecklistLink(form())).toEqual({ v: '1', g: 'all-adjustable', n: '4' });
    expect(
      writeChecklistLink(
        form({
          list: 'tools',
          generation: 'fixed-reference',
          carburettors: '6',
          heading: ' A ',
          notes: 'b\n\nc',
        }),
      ),
    ).toEqual({ v: '1', l: 'tools', g: 'fixed-reference', n: '6', h: 'A', t: 'b\nc' });
  });

  it.each([
    [
      { v: '2', g: 'all-adjustable', n: '4' },
      'This link: this was written by a newer version of this site (2;',
    ],
    [{ v: '1', g: 'constructor', n: '4' }, 'This link: give separate-cables, '],
    [{ v: '1', g: 'all-adjustable', n: '40' }, 'This link: give 2, 3, 4, 5, 6, 7 or 8; you wrote “40”.'],
    [{ v: 'x', g: 'all-adjustable', n: '4' }, 'This link: give 1; you wrote “x”.'],
    [
      { v: '1', g: 'all-adjustable', n: '4', t: 'x'.repeat(5000) },
      'This link: give at most 240 characters; there are 5000.',
    ],
    [
      { v: '1', g: 'all-adjustable', n: '4', p: '1.0000' },
      'This link: give at most 5 characters; there are 6.',
    ],
  ])('%o is answered in words', (record, words) => {
    const parsed = parseChecklistLink(record as Record<string, string>);
    const problem = parsed.ok ? parsed.value.problems[0] : parsed.problem;
    expect(describeProblem(problem!, { label: 'This link' })).toContain(words);
  });

  it('names keys that it does not know, the long names of its own fields among them', () => {
    const record = JSON.parse(
      '{"g":"all-adjustable","n":"4","heading":"x","__proto__":"y","constructor":"z"}',
    ) as Record<string, string>;
    const parsed = parseChecklistLink(record);
    expect(parsed.ok && parsed.value.unknownKeys).toEqual(['heading', '__proto__', 'constructor']);
    expect(parsed.ok && parsed.value.form).toEqual(form());
  });

  it('makes a club’s words plain, and leaves what chooses a list to the letter', () => {
    const record = { g: 'all-adjustable', n: '4', h: 'a\nb', p: '1\u200B.0', t: 'a\r\n\nb' };
    expect(parseChecklistLink(record)).toMatchObject({
      value: { form: form({ heading: 'a b', printed: '1.0', notes: 'a\nb' }), unknownKeys: [], problems: [] },
    });
    expect(parseChecklistLink({ g: ' all-adjustable', n: '4' })).toMatchObject({
      value: { problems: [{ kind: 'unknown-choice', typed: ' all-adjustable' }] },
    });
  });

  it('tells a link to a list from another place on the page', () => {
    expect(isChecklistLink({ main: '' })).toBe(false);
    expect(isChecklistLink({})).toBe(false);
    expect(isChecklistLink({ v: '1' })).toBe(true);
    expect(namesChecklist({ v: '1', g: 'all-adjustable' })).toBe(false);
    expect(namesChecklist({ g: 'all-adjustable', n: '4' })).toBe(true);
  });
});

test.each([
  ['a\u0000b\u0007c\u009Fd', 'a b c d'],
  ['line\r\nend\u2028of\u2029it', 'line end of it'],
  ['\u202Edrow\u202C \u2066x\u2069 \u200Fy\u061C', 'drow x y'],
  ['zero\u200Bwidth\uFEFF\u00ADsoft', 'zerowidthsoft'],
  ['tag\u{E0041}\u{E007F}', 'tag'],
  ['half \uD83D end', 'half end'],
  ['private \uE000', 'private'],
  ['e\u0301', 'é'],
  [`Z${'\u0335'.repeat(40)}`, `Z${'\u0335'.repeat(4)}`],
  ['می\u200Cخواهم', 'می\u200Cخواهم'],
  ['👩\u200D🔧 ✔\uFE0F', '👩\u200D🔧 ✔\uFE0F'],
  ['  wide\u2003  spaces\u00A0 ', 'wide spaces'],
  ['<img src=x onerror=alert(1)>', '<img src=x onerror=alert(1)>'],
])('plainLine(%j) is %j', (text, expected) => expect(plainLine(text)).toBe(expected));

test('plainLines(text, most) drops empty lines and runs the last ones together', () => {
  expect(plainLines('a\n\n \nb\rc\u2028d', 3)).toEqual(['a', 'b', 'c d']);
  expect(plainLines('', 3)).toEqual([]);
});

describe('the code of a list', () => {
  it('carries the whole link where it stays coarse enough, else the link without words', () => {
    const plain = 'https://site.example/#v=1';
    expect(checklistCode('x'.repeat(codeLengthLimit), plain).whole).toBe(true);
    expect(checklistCode('x'.repeat(codeLengthLimit + 1), plain)).toEqual({ text: plain, whole: false });
  });

  it.each([1, 14, 26, 62, 106, 122, 180, 251, 331, 412, codeLengthLimit])(
    'of %d characters is read back by a reader that shares nothing with the writer',
    (length) => {
      const text = 'https://evendraw.example/checklists/#v=1&g=x&t=%C3%BC+'.repeat(20).slice(0, length);
      expect(readQr(qrModules(text))).toBe(text);
    },
  );

  it('has 85 modules a side at its longest, and is noticed when a module is wrong', () => {
    const modules = qrModules('x'.repeat(codeLengthLimit)).map((row) => [...row]);
    expect(modules).toHaveLength(85);
    modules[40]![40] = !modules[40]![40];
    expect(() => readQr(modules)).toThrow('a check word is wrong');
  });

  it('is drawn module by module, with its light margin', () => {
    const modules = qrModules('Evendraw');
    const { viewBox, path } = qrPath(modules);
    expect(viewBox).toBe(`-4 -4 ${modules.length + 8} ${modules.length + 8}`);
    const drawn = modules.map((row) => row.map(() => false));
    for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/gu))
      for (let k = 0; k < Number(length); k += 1) {
        expect(drawn[Number(y)]![Number(x) + k]).toBe(false);
        drawn[Number(y)]![Number(x) + k] = true;
      }
    expect(drawn).toEqual(modules);
  });
});

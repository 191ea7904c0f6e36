import { describe, expect, test } from 'vitest';
import {
  generations,
  inventEngine,
  lessonIds,
  lessonOf,
  lessons,
  parsePracticeEngine,
  practiceEngineExample,
  practiceEngineFields,
  practiceFaults,
} from '../../src/calculators/index.ts';
import type { Form, PracticeEngineField } from '../../src/calculators/index.ts';
import { initialForm } from '../../src/calculators/calculator-form.ts';

const parse = (changes: Partial<Form<PracticeEngineField>> = {}) =>
  parsePracticeEngine({ ...initialForm(practiceEngineFields), ...changes });

describe('parsePracticeEngine(form)', () => {
  test('the first form is the example', () => {
    expect(parse()).toEqual({ ok: true, value: practiceEngineExample });
  });

  test('reads every field', () => {
    const changes = { generation: 'paired-screws', carburettors: '6', grade: '3', seed: '999999' };
    expect(parse({ ...changes, fault: 'shut-tap' })).toEqual({
      ok: true,
      value: {
        generation: 'paired-screws',
        carburettors: 6,
        grade: 3,
        seed: 999_999,
        fault: 'shut-tap',
      },
    });
  });

  test('a lesson has its own exercise, whatever the other fields say', () => {
    for (const id of lessonIds)
      expect(parse({ lesson: id, seed: 'x', generation: '' })).toEqual({
        ok: true,
        value: lessonOf(id).exercise,
      });
  });

  test('a hidden fault is drawn by the seed: each of them, and none at all, comes up', () => {
    const drawn = Array.from({ length: 200 }, (_, seed) => {
      const parsed = parse({ fault: 'hidden', seed: String(seed) });
      return parsed.ok ? parsed.value.fault : 'refused';
    });
    expect(new Set(drawn)).toEqual(new Set([...practiceFaults, null]));
    // Two of eight draws are none.
    const none = drawn.filter((fault) => fault === null).length / drawn.length;
    expect(none).toBeGreaterThan(0.15);
    expect(none).toBeLessThan(0.35);
  });

  test.each<[PracticeEngineField, string, object]>([
    ['generation', 'none', { kind: 'unknown-choice' }],
    ['carburettors', '7', { kind: 'unknown-choice' }],
    ['grade', '0', { kind: 'unknown-choice' }],
    ['fault', 'rust', { kind: 'unknown-choice' }],
    ['seed', '', { kind: 'empty' }],
    ['seed', 'x', { kind: 'not-a-number' }],
    ['seed', '-1', { kind: 'out-of-range', value: -1, limit: { min: 0, max: 999_999 } }],
    ['seed', '1000000', { kind: 'out-of-range' }],
    ['seed', '1.5', { kind: 'not-whole', typed: '1.5' }],
  ])('%s %j is refused beside its field', (field, typed, problem) => {
    expect(parse({ [field]: typed })).toMatchObject({
      ok: false,
      problems: [{ field, problem: { ...problem, field } }],
    });
  });

  test.each(generations.filter((each) => each !== 'paired-screws'))(
    'five carburettors may be %s',
    (generation) => {
      expect(parse({ generation, carburettors: '5' })).toMatchObject({
        ok: true,
        value: { generation, carburettors: 5 },
      });
    },
  );

  test('all that is wrong is told at once', () => {
    const parsed = parse({ generation: 'none', carburettors: '7', grade: '0', seed: 'x', fault: 'rust' });
    expect(parsed.ok ? [] : parsed.problems.map(({ field }) => field)).toEqual([
      'generation',
      'carburettors',
      'grade',
      'seed',
      'fault',
    ]);
  });

  test('five carburettors have no usual pairs', () => {
    expect(parse({ generation: 'paired-screws', carburettors: '5' })).toEqual({
      ok: false,
      problems: [{ field: 'carburettors', problem: { kind: 'groups-needed', value: 5 } }],
    });
  });
});

test('lessonOf(id) is the lesson of that name, and its engine can be invented', () => {
  expect(lessons.map(({ id }) => id)).toEqual([...lessonIds]);
  for (const id of lessonIds) {
    expect(lessonOf(id).id).toBe(id);
    expect(inventEngine(lessonOf(id).exercise).ok).toBe(true);
  }
});

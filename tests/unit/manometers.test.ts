import { expect, test } from 'vitest';
import { manometerDrawing } from '../../src/drawing/manometers.ts';

const kinds = ['u-tube', 'well', 'inclined'] as const;
const sides = ['difference', 'depression'] as const;

test.each(kinds.flatMap((kind) => sides.map((side) => [kind, side] as const)))(
  'the drawing of a %s, %s: what it says, and everything inside its frame',
  (kind, side) => {
    const { viewBox, title, callouts, paths } = manometerDrawing(kind, side);
    const [, , width = 0, height = 0] = viewBox.split(' ').map(Number);
    const letters = callouts.map(({ letter }) => letter);
    expect(letters).toContain('h');
    expect(letters.includes('C')).toBe(side === 'depression');
    expect(letters.includes('L')).toBe(kind === 'inclined');
    expect(new Set(letters).size).toBe(letters.length);
    expect(title).toContain(side === 'depression' ? 'open to the air' : 'second catch pot');
    for (const { x, y } of callouts) expect(x > 0 && x < width && y > 0 && y < height).toBe(true);
    expect(new Set(paths.map(({ d }) => d)).size).toBe(paths.length);
    for (const { d } of paths) expect(d).not.toMatch(/NaN|undefined/);
  },
);

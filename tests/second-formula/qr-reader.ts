/**
 * A reader of undamaged QR codes of level M in byte mode, versions 1 to 20, written from ISO/IEC 18004 and sharing nothing
 * with the writer: it takes the grid apart, checks both copies of the format and every check word, and gives the text.
 */

// ISO/IEC 18004, table 9, level M: check words a block, and blocks.
const checkWords = [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26];
const blockCounts = [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16];

type Grid = readonly (readonly boolean[])[];

const masks: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];

const number = (bits: readonly boolean[]): number => bits.reduce((sum, bit) => sum * 2 + Number(bit), 0);

function formatMask(grid: Grid): number {
  const side = grid.length;
  const at = (x: number, y: number): boolean => grid[y]![x]!;
  const line = (count: number, place: (k: number) => boolean) =>
    Array.from({ length: count }, (_, k) => place(k));
  const corner = [...line(6, (k) => at(k, 8)), at(7, 8), at(8, 8), at(8, 7), ...line(6, (k) => at(8, 5 - k))];
  const edges = [...line(7, (k) => at(8, side - 1 - k)), ...line(8, (k) => at(side - 8 + k, 8))];
  if (number(corner) !== number(edges)) throw new Error('the two copies of the format differ');
  const format = number(corner) ^ 0x5412;
  if (format >> 13 !== 0) throw new Error('not of level M');
  return (format >> 10) & 7;
}

/** Where no data lie: finders, formats, timing, alignment, version. */
function isFixed(side: number): (x: number, y: number) => boolean {
  const version = (side - 17) / 4;
  const count = version === 1 ? 0 : Math.floor(version / 7) + 2;
  const step = Math.ceil((side - 13) / (2 * count - 2)) * 2;
  const centres = Array.from({ length: count }, (_, k) => (k === 0 ? 6 : side - 7 - (count - 1 - k) * step));
  const isFinder = (x: number, y: number) =>
    (x < 9 && y < 9) || (x >= side - 8 && y < 9) || (x < 9 && y >= side - 8);
  const inVersion = (x: number, y: number) =>
    version >= 7 && ((x < 6 && y >= side - 11) || (y < 6 && x >= side - 11));
  const inAlignment = (x: number, y: number) =>
    centres.some((cx) =>
      centres.some(
        (cy) =>
          !((cx === 6 && cy === 6) || (cx === 6 && cy === side - 7) || (cx === side - 7 && cy === 6)) &&
          Math.abs(x - cx) <= 2 &&
          Math.abs(y - cy) <= 2,
      ),
    );
  return (x, y) => isFinder(x, y) || x === 6 || y === 6 || inVersion(x, y) || inAlignment(x, y);
}

function wordsOf(grid: Grid): number[] {
  const side = grid.length;
  const fixed = isFixed(side);
  const mask = masks[formatMask(grid)]!;
  const bits: boolean[] = [];
  let up = true;
  for (let right = side - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < side; step += 1) {
      const y = up ? side - 1 - step : step;
      for (const x of [right, right - 1]) if (!fixed(x, y)) bits.push(grid[y]![x]! !== mask(x, y));
    }
    up = !up;
  }
  return Array.from({ length: Math.floor(bits.length / 8) }, (_, k) => number(bits.slice(8 * k, 8 * k + 8)));
}

const product = (a: number, b: number): number => {
  let result = 0;
  for (let bit = 7; bit >= 0; bit -= 1) {
    result = (result << 1) ^ (result & 0x80 ? 0x11d : 0);
    if ((b >> bit) & 1) result ^= a;
  }
  return result;
};

/** The text of a code. Throws where anything in it is not as it must be. */
export function readQr(grid: Grid): string {
  const side = grid.length;
  const version = (side - 17) / 4;
  const check = checkWords[version - 1]!;
  const blocks = blockCounts[version - 1]!;
  const words = wordsOf(grid);
  const short = Math.floor(words.length / blocks) - check;
  const longer = words.length % blocks;
  const lengths = Array.from({ length: blocks }, (_, k) => short + Number(k >= blocks - longer));
  const data: number[][] = lengths.map(() => []);
  let next = 0;
  for (let place = 0; place <= short; place += 1)
    lengths.forEach((length, k) => {
      if (place < length) data[k]!.push(words[next++]!);
    });
  const whole = data.map((block) => [...block]);
  for (let place = 0; place < check; place += 1) whole.forEach((block) => block.push(words[next++]!));
  for (const block of whole)
    for (let power = 0, root = 1; power < check; power += 1, root = product(root, 2))
      if (block.reduce((sum, word) => product(sum, root) ^ word, 0) !== 0)
        throw new Error('a check word is wrong');
  const bits = data
    .flat()
    .flatMap((word) => Array.from({ length: 8 }, (_, k) => ((word >> (7 - k)) & 1) === 1));
  if (number(bits.slice(0, 4)) !== 4) throw new Error('not in byte mode');
  const counted = version < 10 ? 8 : 16;
  const length = number(bits.slice(4, 4 + counted));
  const bytes = Array.from({ length }, (_, k) =>
    number(bits.slice(4 + counted + 8 * k, 12 + counted + 8 * k)),
  );
  return new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(bytes));
}

import { describe, expect, test } from 'vitest';
import { readTextFile, type TextFileFault } from '../../src/device/read-text-file.ts';

const largest = 1000;
const read = (...parts: BlobPart[]) => readTextFile(new Blob(parts), largest);
const faultOf = async (...parts: BlobPart[]): Promise<TextFileFault['kind'] | null> => {
  const answer = await read(...parts);
  return answer.ok ? null : answer.fault.kind;
};
const utf16 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([...text].flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8]));

describe('readTextFile(file, largestBytes)', () => {
  test.each(['{}', 'é “quoted” 😀', ' '.repeat(largest), '\u202eabc'])('is the text: %s', async (text) => {
    expect(await read(text)).toEqual({ ok: true, text });
  });

  test('leaves out a byte order mark', async () => {
    expect(await read('\ufeff{}')).toEqual({ ok: true, text: '{}' });
  });

  test('counts bytes, not letters', async () => {
    expect(await faultOf('é'.repeat(largest / 2))).toBeNull();
    expect(await faultOf('é'.repeat(largest / 2 + 1))).toBe('too-large');
  });

  test('refuses a file of 50 MB without reading it', async () => {
    const file = { size: 50_000_000, arrayBuffer: () => Promise.reject(new Error('it was read')) };
    expect(await readTextFile(file as unknown as Blob, largest)).toEqual({
      ok: false,
      fault: { kind: 'too-large' },
    });
  });

  test('an empty file', async () => {
    expect(await faultOf()).toBe('empty');
  });

  test.each<[string, Uint8Array<ArrayBuffer>]>([
    ['UTF-16 with its mark', Uint8Array.from([0xff, 0xfe, ...utf16('{"format":1}')])],
    ['UTF-16 without', utf16('{"format":1}')],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
    ['half a letter', Uint8Array.from([0x22, 0xc3])],
    ['half a surrogate pair as bytes', Uint8Array.from([0xed, 0xa0, 0x80])],
    ['a letter written too long', Uint8Array.from([0xc0, 0xaf])],
  ])('is not text: %s', async (_, bytes) => {
    expect(await faultOf(bytes)).toBe('not-text');
  });

  test('a file that is gone since it was chosen', async () => {
    const file = { size: 10, arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')) };
    expect(await readTextFile(file as unknown as Blob, largest)).toEqual({
      ok: false,
      fault: { kind: 'unreadable' },
    });
  });
});

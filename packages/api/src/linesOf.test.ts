import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linesOf } from './linesOf.js';

/** The lines of some bytes that arrive in the chunks that end at these places. */
async function linesIn(bytes: Uint8Array, ends: readonly number[] = []): Promise<string[]> {
  const places = [0, ...ends.toSorted((a, b) => a - b), bytes.length];
  async function* chunks() {
    for (const [at, end] of places.slice(1).entries()) yield bytes.subarray(places[at], end);
  }
  const lines: string[] = [];
  for await (const line of linesOf(chunks())) lines.push(line);
  return lines;
}

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('the lines of a stream', () => {
  test.each([
    ['a line each', 'one\ntwo\n', ['one', 'two']],
    ['a last line without an end', 'one\ntwo', ['one', 'two']],
    ['CRLF, as a file that went through another system', 'one\r\ntwo\r\n', ['one', 'two']],
    ['an empty line', 'one\n\ntwo\n', ['one', '', 'two']],
    ['a CR within a line, which ends none', 'o\rne\n', ['o\rne']],
    ['nothing', '', []],
    ['one end alone', '\n', ['']],
    ['every writing', 'Łuk\n赵𐍈\n👩🏽‍⚕️\n', ['Łuk', '赵𐍈', '👩🏽‍⚕️']],
  ])('%s', async (_, text, lines) => {
    expect(await linesIn(bytesOf(text))).toEqual(lines);
  });

  test('are the same wherever the chunks end: within a letter, within CRLF, or one byte at a time', async () => {
    const bytes = bytesOf('Zoë “=1+1”\r\n赵 𐍈\r\n\n👩🏽‍⚕️');
    const whole = await linesIn(bytes);
    expect(whole).toEqual(['Zoë “=1+1”', '赵 𐍈', '', '👩🏽‍⚕️']);
    for (let place = 0; place <= bytes.length; place += 1)
      expect(await linesIn(bytes, [place])).toEqual(whole);
    expect(await linesIn(bytes, Array.from(bytes.keys()))).toEqual(whole);
  });

  test('are what splitting the whole text gives, for any text and any chunks', async () => {
    const sign = fc.oneof(fc.constantFrom('\n', '\r\n', '\r'), fc.string({ unit: 'grapheme', maxLength: 3 }));
    const text = fc.array(sign, { maxLength: 12 }).map((signs) => signs.join(''));
    await fc.assert(
      fc.asyncProperty(text, fc.array(fc.nat(40), { maxLength: 8 }), async (given, ends) => {
        const bytes = bytesOf(given);
        const lines = given.split(/\r?\n/);
        if (lines.at(-1) === '') lines.pop();
        const within = ends.map((end) => Math.min(end, bytes.length));
        expect(await linesIn(bytes, within)).toEqual(lines);
      }),
    );
  });

  test('are asked for one by one: nothing is read ahead of whoever wants them', async () => {
    let read = 0;
    async function* chunks() {
      for (const text of ['one\n', 'two\n', 'three\n']) {
        read += 1;
        yield bytesOf(text);
      }
    }
    const lines = linesOf(chunks());
    expect(read).toBe(0);
    expect((await lines.next()).value).toBe('one');
    expect(read).toBe(1);
  });

  test.each([
    ['a byte that is no UTF-8', [0x61, 0xff, 0x0a]],
    ['half a letter at the end', [0x61, 0xc3]],
    ['half of a surrogate pair, written as bytes', [0xed, 0xa0, 0x80, 0x0a]],
  ])('refuse %s', async (_, bytes) => {
    await expect(linesIn(Uint8Array.from(bytes))).rejects.toThrow(TypeError);
  });
});

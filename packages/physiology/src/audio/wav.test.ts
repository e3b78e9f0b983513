import { expect, it } from 'vitest';
import { wav } from './wav.js';

/** Reads chunk after chunk, as RIFF says: name, size, content, and one byte more where the size is odd. */
function chunksOf(bytes: Uint8Array, from: number): Map<string, DataView> {
  const found = new Map<string, DataView>();
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = from; at < bytes.length; ) {
    const name = String.fromCharCode(...bytes.subarray(at, at + 4));
    const size = view.getUint32(at + 4, true);
    found.set(name, new DataView(bytes.buffer, bytes.byteOffset + at + 8, size));
    at += 8 + size + (size % 2);
  }
  return found;
}

// Source of every offset: Multimedia Programming Interface and Data Specifications 1.0 (1991), RIFF WAVE, PCM.
it.each([null, 'SIMULATED', 'SIMULATED!'])(
  'a reader that walks the chunks finds everything (comment: %s)',
  (comment) => {
    const bytes = wav(Float32Array.of(0, 0.5, -0.5, 1, -1, 2, -2), 48_000, comment);
    const head = new DataView(bytes.buffer);
    expect(String.fromCharCode(...bytes.subarray(0, 4))).toBe('RIFF');
    expect(head.getUint32(4, true)).toBe(bytes.length - 8);
    expect(String.fromCharCode(...bytes.subarray(8, 12))).toBe('WAVE');
    const chunks = chunksOf(bytes, 12);
    const format = chunks.get('fmt ')!;
    expect([0, 2, 12, 14].map((at) => format.getUint16(at, true))).toEqual([1, 1, 2, 16]);
    expect([4, 8].map((at) => format.getUint32(at, true))).toEqual([48_000, 96_000]);
    const data = chunks.get('data')!;
    const values = Array.from({ length: data.byteLength / 2 }, (_, i) => data.getInt16(2 * i, true));
    expect(values).toEqual([0, 16_384, -16_383, 32_767, -32_767, 32_767, -32_768]);
    const list = chunks.get('LIST');
    expect(list === undefined).toBe(comment === null);
    if (list !== undefined) {
      const info = new Uint8Array(list.buffer, list.byteOffset, list.byteLength);
      const text = chunksOf(info, 4).get('ICMT')!;
      const said = String.fromCharCode(...new Uint8Array(text.buffer, text.byteOffset, text.byteLength));
      expect(said).toBe(`${comment}\0`);
    }
  },
);

it('a sound of no length is a file of 44 bytes', () => {
  expect(wav(new Float32Array(0), 8_000)).toHaveLength(44);
});

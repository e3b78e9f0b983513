/** The streams of chance of a simulated person. A value is named by seed, stream and index, never by what was drawn before. */
export const STREAMS = [
  'patient',
  'beat',
  'af',
  'ectopy',
  'breath',
  'bpv',
  'ksound',
  'noise',
  'gauge',
] as const;
export type Stream = (typeof STREAMS)[number];

const STREAM_KEY: Readonly<Record<Stream, number>> = Object.fromEntries(
  STREAMS.map((name, index) => [name, Math.imul(index + 1, 0x9e3779b1) >>> 0]),
) as Record<Stream, number>;

/** Mixes 32 bits (a signed number: the engine keeps those without making objects of them) so that each bit of the answer hangs on each bit of the question (two rounds of multiply and shift). */
function mixed(bits: number): number {
  let x = bits;
  x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
  x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
  return x ^ (x >>> 15);
}

const TWO_TO_MINUS_32 = 2 ** -32;
const TWO_TO_MINUS_53 = 2 ** -53;
const TWO_TO_21 = 2 ** 21;

/** What a seed and a stream come down to, a signed number of 32 bits: made once, and then drawn from with `uniformOf`. */
export function keyOf(seed: number, stream: Stream): number {
  return mixed(mixed(seed) ^ STREAM_KEY[stream]);
}

/** A number in (0, 1), 53 bits of it, for the `lane`-th draw of the `index`-th beat, breath or event of a key. */
export function uniformOf(key: number, index: number, lane = 0): number {
  const at = mixed(key ^ Math.imul(index | 0, 0x85ebca6b) ^ Math.imul(lane | 0, 0xc2b2ae35));
  const high = mixed(at ^ 0x68e31da4);
  const low = mixed(at ^ 0xb5297a4d);
  const value = (high >>> 0) * TWO_TO_MINUS_32 + (low >>> 11) * TWO_TO_MINUS_53;
  return value === 0 ? TWO_TO_MINUS_53 / TWO_TO_21 : value;
}

/**
 * A number in (0, 1), 53 bits of it, for the `lane`-th draw of the `index`-th beat, breath or event of a stream.
 * The same on every machine: integers and exact powers of two alone.
 */
export function uniform(seed: number, stream: Stream, index: number, lane = 0): number {
  return uniformOf(keyOf(seed, stream), index, lane);
}

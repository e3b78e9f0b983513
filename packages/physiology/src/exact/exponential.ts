/*
 * Exponential and logarithm out of additions, multiplications, divisions and exact powers of two alone, which every
 * machine and browser rounds alike; Math.exp and Math.log may differ in the last bit from one to the next.
 * Coefficients: FreeBSD msun / fdlibm e_exp.c and e_log.c (Sun Microsystems 1993, freely usable), error under 1 ulp.
 */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const INVERSE_LN2 = Math.LOG2E;

/** Powers of two from 2^-1074 to 2^1023, exact. */
const POWERS_FROM = -1074;
const POWERS = powersOfTwo();

function powersOfTwo(): Float64Array {
  const all = new Float64Array(1024 - POWERS_FROM);
  let value = 1;
  for (let k = 0; k <= 1023; k++, value *= 2) all[k - POWERS_FROM] = value;
  value = 1;
  for (let k = 0; k >= POWERS_FROM; k--, value /= 2) all[k - POWERS_FROM] = value;
  return all;
}

/** e to the power x; 0 under -745, infinity over 709.7. */
export function exp(x: number): number {
  if (x > 709.782712893384) return Number.POSITIVE_INFINITY;
  if (x < -745.13321910194) return 0;
  const k = Math.floor(x * INVERSE_LN2 + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const t = r * r;
  const c =
    r -
    t *
      (0.16666666666666602 +
        t *
          (-0.0027777777777015593 +
            t * (6.613756321437934e-5 + t * (-1.6533902205465252e-6 + t * 4.1381367970572385e-8))));
  const y = 1 - (low - (r * c) / (2 - c) - high);
  if (k > 1023) return y * 2 * (POWERS[k - 1 - POWERS_FROM] as number);
  // Under the normal numbers two steps, so that the last one alone rounds.
  if (k < -1021) return y * (POWERS[k + 54 - POWERS_FROM] as number) * 2 ** -54;
  return y * (POWERS[k - POWERS_FROM] as number);
}

const WORD = new Float64Array(1);
const WORDS = new Uint32Array(WORD.buffer);
/** Which half of a number carries its exponent on this machine. */
const HIGH = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 1 : 0;

/** The natural logarithm; minus infinity at 0, NaN below. */
export function log(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  let k = 0;
  WORD[0] = x;
  if (x < 2.2250738585072014e-308) {
    WORD[0] = x * 2 ** 54;
    k = -54;
  }
  const bits = WORDS[HIGH] as number;
  k += (bits >>> 20) - 1023;
  WORDS[HIGH] = (bits & 0x000fffff) | 0x3ff00000;
  let m = WORD[0] as number;
  if (m > Math.SQRT2) {
    m /= 2;
    k += 1;
  }
  const f = m - 1;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373));
  const odd =
    z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)));
  const half = 0.5 * f * f;
  return k * LN2_HIGH - (half - (s * (half + even + odd) + k * LN2_LOW) - f);
}

/** x to the power y, for x of 0 and more. */
export function power(x: number, y: number): number {
  if (y === 0) return 1;
  return x === 0 ? 0 : exp(y * log(x));
}

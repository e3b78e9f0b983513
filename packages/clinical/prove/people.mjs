/**
 * Seeded people and tappers for the heavy loops: xoshiro128** seeded by splitmix32, so that a seed gives the same
 * draws on every machine. Nothing here is imported by the package.
 */
export function generator(seed) {
  let mix = seed >>> 0;
  const next32 = () => {
    mix = (mix + 0x9e3779b9) >>> 0;
    let z = mix;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return (z ^ (z >>> 16)) >>> 0;
  };
  const s = [next32(), next32(), next32(), next32()];
  const rotate = (x, k) => ((x << k) | (x >>> (32 - k))) >>> 0;
  const uint32 = () => {
    const result = Math.imul(rotate(Math.imul(s[1], 5) >>> 0, 7), 9) >>> 0;
    const t = (s[1] << 9) >>> 0;
    s[2] = (s[2] ^ s[0]) >>> 0;
    s[3] = (s[3] ^ s[1]) >>> 0;
    s[1] = (s[1] ^ s[2]) >>> 0;
    s[0] = (s[0] ^ s[3]) >>> 0;
    s[2] = (s[2] ^ t) >>> 0;
    s[3] = rotate(s[3], 11);
    return result;
  };
  const uniform = (low = 0, high = 1) => low + ((high - low) * (uint32() + 0.5)) / 4294967296;
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const whole = (low, high) => Math.floor(uniform(low, high + 1));
  return { uniform, normal, whole };
}

/** Independent intervals, lognormal so that none is negative, with this mean and coefficient of variation. */
export function independentIntervals(chance, n, mean, cv) {
  const spread = Math.sqrt(Math.log(1 + cv * cv));
  return Array.from({ length: n }, () => mean * Math.exp(spread * chance.normal() - (spread * spread) / 2));
}

/**
 * Slowly varying intervals: a first-order autoregression plus a breathing wave of random phase, sharing the
 * variance. None shorter than a quarter of the mean.
 */
export function slowIntervals(chance, n, mean, cv, { correlation, breathsPerMinute, breathingShare }) {
  const wander = cv * Math.sqrt(1 - breathingShare);
  const wave = cv * Math.sqrt(2 * breathingShare);
  const turn = (2 * Math.PI * breathsPerMinute * mean) / 60;
  const phase = chance.uniform(0, 2 * Math.PI);
  let state = chance.normal();
  return Array.from({ length: n }, (_, i) => {
    const deviation = wander * state + wave * Math.sin(phase + turn * i);
    state = correlation * state + Math.sqrt(1 - correlation * correlation) * chance.normal();
    return mean * Math.max(0.25, 1 + deviation);
  });
}

/** The times of beats with these intervals, from 0. */
export function timesOf(intervals) {
  let time = 0;
  return [
    0,
    ...intervals.map((interval) => {
      time += interval;
      return time;
    }),
  ];
}

/** Tap times in seconds: each beat plus an independent error of the finger, kept in order. */
export function tapped(chance, intervals, jitterSeconds) {
  let beat = 0;
  const seconds = [jitterSeconds * chance.normal()];
  for (const interval of intervals) {
    beat += interval;
    seconds.push(Math.max(beat + jitterSeconds * chance.normal(), seconds.at(-1) + 0.001));
  }
  return seconds;
}

/** Rhythms as the bedside handbook's recipes have them (1.8), as intervals in seconds. */
export const RHYTHMS = {
  regular: (chance, n, mean) => independentIntervals(chance, n, mean, chance.uniform(0.01, 0.02)),
  'regular-with-breathing': (chance, n, mean) =>
    slowIntervals(chance, n, mean, chance.uniform(0.05, 0.1) / Math.SQRT2, {
      correlation: 0,
      breathsPerMinute: chance.uniform(9, 18),
      breathingShare: 0.95,
    }),
  'occasionally-irregular': (chance, n, mean) => {
    const intervals = independentIntervals(chance, n, mean, 0.02);
    const share = chance.uniform(0.02, 0.1);
    const early = chance.uniform(0.25, 0.4);
    let count = 0;
    for (let i = 1; i < n - 1; i++) {
      const isLast = count === 0 && i === n - 2;
      if (!isLast && chance.uniform() > share) continue;
      intervals[i] -= early * mean;
      intervals[i + 1] += early * mean;
      count++;
      i += 2;
    }
    return intervals;
  },
  'regularly-irregular': (chance, n, mean) => {
    const early = chance.uniform(0.25, 0.4) * mean;
    const cycle = chance.whole(2, 4);
    return independentIntervals(chance, n, mean, 0.02).map((interval, i) => {
      const place = i % cycle;
      return place === 0 ? interval - early : place === 1 ? interval + early : interval;
    });
  },
  'irregularly-irregular': (chance, n, mean) =>
    independentIntervals(chance, n, mean, chance.uniform(0.2, 0.28)),
};

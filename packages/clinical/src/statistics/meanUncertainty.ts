import { cosinePowers } from './cosinePowers.js';
import { tQuantile } from './distributions.js';

const MOST = 80;

const PHI = [0, 0.3, 0.5, 0.7, 0.8, 0.88, 0.94];
const PHI_PRIOR = [0.5, 0.083, 0.083, 0.083, 0.083, 0.083, 0.083];
const LAMBDA = [0, 0.05, 0.25, 1, 4, 16, 64];

/** Half-width of the 95 % interval of the long-run mean. */
export function meanHalfWidth(values: readonly number[], probability: number): number {
  const n = values.length;
  const count = Math.min(n - 1, MOST);
  const powers = cosinePowers(values, count);
  const cosines = new Float64Array(count);
  for (let j = 0; j < count; j++) cosines[j] = Math.cos((Math.PI * (j + 1)) / n);
  const logs: number[] = [];
  const scales: number[] = [];
  let best = -Infinity;
  for (const [i, phi] of PHI.entries()) {
    const own = 1 - phi * phi;
    const of = 1 + phi * phi;
    const personVariance = ((1 + phi) / (1 - phi) - (2 * phi * (1 - phi ** n)) / (n * (1 - phi) ** 2)) / n;
    for (const lambda of LAMBDA) {
      let product = 1;
      let sum = 0;
      for (let j = 0; j < count; j++) {
        const c = cosines[j] as number;
        const f = own / (of - 2 * phi * c) + 2 * lambda * (1 - c);
        product *= f;
        sum += (powers[j] as number) / f;
      }
      const log = Math.log(PHI_PRIOR[i] as number) - 0.5 * Math.log(product) - (count / 2) * Math.log(sum);
      logs.push(log);
      if (log > best) best = log;
      scales.push((sum / count) * (personVariance + (2 * lambda) / (n * n)));
    }
  }
  let total = 0;
  let second = 0;
  let fourth = 0;
  for (let i = 0; i < logs.length; i++) {
    const weight = Math.exp((logs[i] as number) - best);
    const s2 = scales[i] as number;
    total += weight;
    second += weight * s2;
    fourth += weight * s2 * s2;
  }
  const tails = Math.max(count, 5);
  const variance = (second / total) * (tails / (tails - 2));
  const kurtosis = ((fourth / total) * 3 * tails * tails) / ((tails - 2) * (tails - 4)) / variance ** 2;
  const df = 4 + 6 / Math.max(kurtosis - 3, 1e-6);
  return tQuantile((1 + probability) / 2, df) * Math.sqrt((variance * (df - 2)) / df);
}

const KNEE = 0.7;
const MOST = 0.98;

/** The end of the chain, in place: what is under 0.7 is left alone, what is over it bends, without a corner, towards 0.98. */
export function limit(samples: Float32Array): void {
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i] as number;
    const size = x < 0 ? -x : x;
    if (size <= KNEE) continue;
    const over = (size - KNEE) / (MOST - KNEE);
    const bent = KNEE + ((MOST - KNEE) * over) / (1 + over);
    samples[i] = x < 0 ? -bent : bent;
  }
}

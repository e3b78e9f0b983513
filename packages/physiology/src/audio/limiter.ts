const KNEE = 0.7;
const MOST = 0.98;

/** The end of the chain, in place: what is under 0.7 is left alone, what is over it bends, without a corner, towards 0.98. */
export function limit(samples: Float32Array): void {
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i] as number;
    if (x > KNEE || x < -KNEE) samples[i] = bent(x);
  }
}

function bent(x: number): number {
  const over = (Math.abs(x) - KNEE) / (MOST - KNEE);
  const size = KNEE + ((MOST - KNEE) * over) / (1 + over);
  return x < 0 ? -size : size;
}

/** The same as a table from -1 to 1, for a player that shapes what it plays; an odd number of points, so that 0 is one. */
export function limiterCurve(): Float32Array<ArrayBuffer> {
  const curve = new Float32Array(POINTS);
  for (let i = 0; i < POINTS; i++) curve[i] = (2 * i) / (POINTS - 1) - 1;
  limit(curve);
  return curve;
}

const POINTS = 4097;

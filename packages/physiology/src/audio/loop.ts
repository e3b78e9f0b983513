/** A piece of noise that can be played round and round: its last part is laid over its first. Shorter by that part. */
export function asLoop(samples: Float32Array, overlap: number): Float32Array {
  const length = samples.length - overlap;
  const loop = samples.slice(0, length);
  for (let i = 0; i < overlap; i++) {
    // Of two noises that know nothing of each other the powers add up.
    const into = Math.sqrt(i / overlap);
    const out = Math.sqrt(1 - i / overlap);
    loop[i] = (samples[i] as number) * into + (samples[length + i] as number) * out;
  }
  return loop;
}

/** Shared by the benches: nothing here judges. */
export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

export async function repeated(times, work) {
  for (let time = 0; time < times; time += 1) await work(time);
}

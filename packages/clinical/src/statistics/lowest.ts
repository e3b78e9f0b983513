/** The `count` lowest values from one place up to another that is not of them, the least first; fewer where there are fewer. */
export function lowest(values: readonly number[], from: number, to: number, count: number): number[] {
  const found: number[] = [];
  for (let k = from; k < to; k++) {
    const value = values[k] as number;
    let place = found.length;
    while (place > 0 && (found[place - 1] as number) > value) place--;
    if (place === count) continue;
    found.splice(place, 0, value);
    if (found.length > count) found.pop();
  }
  return found;
}

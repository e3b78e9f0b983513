/** To the nearest mark of a gauge that is marked every 2 mmHg. */
export function roundedMark(mmHg: number): number {
  return 2 * Math.round(mmHg / 2);
}

/** Where a second hand points, in degrees clockwise from the top; in whole seconds if it steps. */
export function handDegrees(seconds: number, steps: boolean): number {
  const shown = steps ? Math.floor(seconds) : seconds;
  return (shown % 60) * 6;
}

/** The two ends of a mark at a second of a face of 200 by 200, at radii from its middle. */
export function tickEnds(second: number, inner: number, outer: number) {
  const angle = (second / 60) * 2 * Math.PI;
  const at = (radius: number) => [
    Math.round((100 + radius * Math.sin(angle)) * 100) / 100,
    Math.round((100 - radius * Math.cos(angle)) * 100) / 100,
  ];
  const [x1 = 0, y1 = 0] = at(inner);
  const [x2 = 0, y2 = 0] = at(outer);
  return { x1, y1, x2, y2 };
}

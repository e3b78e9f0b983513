import type { MomentOf } from '@evenfall/clinical';
import type { RunContent } from '@evenfall/record';

/** One instant of a run where it is drawn. */
export type RunMark = {
  readonly what: MomentOf | 'peak';
  readonly mmHg: number;
  readonly x: number;
  readonly y: number;
};

export type RunStrip = {
  readonly marks: readonly RunMark[];
  /** The falling line, as an SVG path. */
  readonly line: string;
  /** Whether the numbers came off a display: nothing was heard, and no fall between them is drawn. */
  readonly isDisplay: boolean;
  /** Whether every instant has its time; else they stand at even distances, and the picture says so. */
  readonly isTimed: boolean;
};

type Size = { readonly width: number; readonly height: number };

/** Where the instants of a run are drawn: higher is more pressure, further right is later. Only what was recorded. */
export function runStrip(
  { method, peak, moments }: RunContent['evidence']['run'],
  { width, height }: Size,
): RunStrip {
  const points: { what: RunMark['what']; mmHg: number; atSeconds: number | null }[] = [
    ...(peak === null ? [] : [{ what: 'peak' as const, ...peak }]),
    ...moments,
  ];
  const isTimed = points.length > 1 && points.every(({ atSeconds }) => atSeconds !== null);
  const highest = Math.max(...points.map(({ mmHg }) => mmHg));
  const lowest = Math.min(...points.map(({ mmHg }) => mmHg), highest - 1);
  const first = points[0]?.atSeconds ?? 0;
  const span = (points.at(-1)?.atSeconds ?? 0) - first || 1;
  const marks = points.map(({ what, mmHg, atSeconds }, at): RunMark => {
    const share = isTimed
      ? ((atSeconds ?? first) - first) / span
      : points.length === 1
        ? 0.5
        : at / (points.length - 1);
    return {
      what,
      mmHg,
      x: Math.round(share * width * 10) / 10,
      y: Math.round(((highest - mmHg) / (highest - lowest)) * height * 0.8 * 10) / 10,
    };
  });
  const isDisplay = method === 'device';
  const line = isDisplay ? '' : marks.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join(' ');
  return { marks, line, isDisplay, isTimed };
}

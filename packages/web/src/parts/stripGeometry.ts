/** A mark on a strip: at its own moment, drawn evenly because its moment is not known, put in, or taken out. */
export type StripMark = {
  readonly x: number;
  readonly is: 'timed' | 'even' | 'missed' | 'doubled';
};

/** A strip from 0 to {@link STRIP_WIDTH}, and how far apart its marks stand on average. */
export type StripShape = { readonly marks: readonly StripMark[]; readonly gap: number };

export const STRIP_WIDTH = 320;

/** The marks of a count: as many as were counted, evenly, since nothing more is known. */
export function countStrip(n: number): StripShape {
  const gap = n === 0 ? STRIP_WIDTH : STRIP_WIDTH / n;
  const marks = Array.from({ length: n }, (_, at) => ({ x: rounded((at + 0.5) * gap), is: 'even' as const }));
  return { marks, gap };
}

type Repair = { readonly index: number; readonly what: 'missed' | 'doubled'; readonly added: number };

/**
 * The marks of taps, each at its moment from the first to the last; missed ones evenly in the gap that they
 * leave, doubled ones where they were tapped.
 *
 * @param seconds tap times as read, rising
 * @param repairs by index from 1 among the taps as read: for missed ones the tap before the gap
 */
export function tapsStrip(seconds: readonly number[], repairs: readonly Repair[]): StripShape {
  const first = seconds[0] ?? 0;
  const span = (seconds.at(-1) ?? first) - first;
  const x = (at: number) => (span === 0 ? STRIP_WIDTH / 2 : rounded(((at - first) / span) * STRIP_WIDTH));
  const doubled = new Set(repairs.filter(({ what }) => what === 'doubled').map(({ index }) => index));
  const taps = seconds.map(
    (at, place): StripMark => ({ x: x(at), is: doubled.has(place + 1) ? 'doubled' : 'timed' }),
  );
  const putIn = repairs
    .filter(({ what }) => what === 'missed')
    .flatMap(({ index, added }): StripMark[] => {
      const from = seconds[index - 1];
      const to = seconds.find((_, place) => place >= index && !doubled.has(place + 1));
      if (from === undefined || to === undefined) return [];
      return Array.from({ length: added }, (_, at) => ({
        x: x(from + ((to - from) * (at + 1)) / (added + 1)),
        is: 'missed',
      }));
    });
  const marks = [...taps, ...putIn].sort((a, b) => a.x - b.x);
  return { marks, gap: STRIP_WIDTH / Math.max(marks.length - 1, 1) };
}

function rounded(x: number): number {
  return Math.round(x * 100) / 100;
}

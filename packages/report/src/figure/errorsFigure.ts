import type { Words } from '@evenfall/words';
import type { Drawing, Figure } from './figure.js';
import { errorsOverTime } from './overTime.js';
import { PAPER } from './paint.js';
import { markShape } from './parts.js';

/** What became of one exercise, mmHg over (under 0: below) what was to be had; null: no number. `name` says which and when. */
export type ErrorDrawn = {
  readonly key: string;
  /** Its place in the list beside the figure; absent: in the order of the figure. */
  readonly number?: number;
  readonly name: string;
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly withinMmHg: number;
  readonly isAccepted: { readonly systolic: boolean | null; readonly diastolic: boolean | null };
};

/** Whether all that was written is accepted; null: nothing was. */
function bothOf({ systolic, diastolic }: ErrorDrawn['isAccepted']): boolean | null {
  return systolic === null && diastolic === null ? null : systolic !== false && diastolic !== false;
}

const USUAL: Drawing = { id: 'errors', width: 640, height: 240, paint: PAPER };
const SCALE = { step: 5, least: 15, most: 40, coarseOver: 25 } as const;
/** Both numbers stand beside each other. */
const BESIDE = { systolic: -5, diastolic: 5 } as const;
const COMPONENTS = ['systolic', 'diastolic'] as const;

/** The errors of one person's exercises in the order in which they were made, each in the band in which it is accepted. */
export function errorsFigure(
  errors: readonly ErrorDrawn[],
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { paint } = drawing;
  const title = words.sentence('debrief.errorsFigure');
  const says = ({ name, systolic, diastolic, withinMmHg }: ErrorDrawn) =>
    words.sentence('debrief.errorSays', { name, systolic, diastolic, withinMmHg });
  const description = [
    words.sentence('debrief.errorsSays', { exercises: errors.length }),
    ...errors.slice(-3).map(says),
  ].join(' ');
  const signed = (mmHg: number | null) => (mmHg === null ? '-' : words.sentence('debrief.signed', { mmHg }));
  const columns = errors.map((one, k) => {
    const values = COMPONENTS.map((of) => one[of]).filter((mmHg) => mmHg !== null);
    return {
      key: one.key,
      number: one.number ?? k + 1,
      values,
      at: values[0] ?? 0,
      within: one.withinMmHg,
      says: says(one),
      shapes: (x: number, y: (mmHg: number) => number) =>
        values.length === 0
          ? [markShape('cross', x, y(0), true, paint, one.key)]
          : COMPONENTS.flatMap((of) => {
              const mmHg = one[of];
              if (mmHg === null) return [];
              const isIn = Math.abs(mmHg) <= one.withinMmHg;
              return [markShape(of, x + BESIDE[of], y(mmHg), isIn, paint, one.key)];
            }),
    };
  });
  const table = {
    caption: title,
    columns: [
      words.sentence('debrief.exerciseColumn'),
      words.sentence('debrief.systolicError'),
      words.sentence('debrief.diastolicError'),
      words.sentence('debrief.bandColumn'),
    ],
    rows: errors.map((one) => [
      one.name,
      signed(one.systolic),
      signed(one.diastolic),
      words.sentence('debrief.band', { withinMmHg: one.withinMmHg, isAccepted: bothOf(one.isAccepted) }),
    ]),
  };
  return errorsOverTime(
    columns,
    {
      ...SCALE,
      title,
      description,
      axis: words.sentence('debrief.errorAxis'),
      signed: (mmHg) => words.sentence('debrief.signedWhole', { mmHg }),
      table,
    },
    words,
    drawing,
  );
}

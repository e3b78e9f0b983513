import type { Flag } from '../contract/flag.js';

/** What of a test is read out. */
type StandingSaid = {
  readonly flags: readonly Flag[];
  readonly why: readonly Flag[];
  /** The greatest on the feet, per minute; null where no pulse was taken at rest or on the feet. */
  readonly pulseRise: number | null;
  /** Of the pulse's rise to the systolic's fall; null where it has no meaning or is not known. */
  readonly heartRateRatio: number | null;
};

/** Why there is no such ratio: of no use to whoever was shown none. */
const WHY_NO_RATIO: readonly string[] = [
  'no-systolic-fall',
  'ratio-needs-lying',
  'rhythm-not-known',
  'rhythm-not-sinus',
  'has-pacemaker',
  'takes-rate-slowing-drug',
];

/**
 * What is said of a test of lying and standing beside its answer: that the third minute was missed stands in the answer
 * already where that is left open for it, a fall that lasts is one fall, who felt unwell is said by the alert of it, and how the pulse changed stands before
 * what its rise means; why nothing is made of that rise is left out. No kept value changes: this is how it is read out.
 *
 * @param test what was made of the test
 * @param notes what is said beside it
 * @param alerts the conditions of the round that somebody must act on, which stand above it
 *
 * Source: none; that nothing is said twice is our decision.
 *
 * @example standingBeside({ flags: [], why: [notMeasured], pulseRise: null, heartRateRatio: null }, [missed]) // [notMeasured]
 */
export function standingBeside(
  { flags, why, pulseRise, heartRateRatio }: StandingSaid,
  notes: readonly Flag[],
  alerts: readonly string[] = [],
): readonly Flag[] {
  const isSaid = why.some(({ code }) => code === 'third-minute-not-measured');
  const isRiseSaid = pulseRise === null || flags.some(({ code }) => code === 'rise-without-fall');
  const lasts = notes.find(({ code }) => code === 'fall-lasts');
  const fall = flags.find(({ code }) => code === 'fall-on-standing');
  return [
    ...flags
      .filter(({ code }) => code !== 'symptoms-on-standing' || !alerts.includes('unwell-upright'))
      .map((flag) => (flag === fall && lasts !== undefined ? lasting(flag, lasts) : flag)),
    ...(isRiseSaid ? [] : [{ code: 'pulse-change', figures: { pulseRise } }]),
    ...why.filter(({ code }) => heartRateRatio !== null || !WHY_NO_RATIO.includes(code)),
    ...notes.filter(
      (note) => !(isSaid && note.code === 'third-minute-missed') && !(note === lasts && fall !== undefined),
    ),
  ];
}

/** A fall with what was left of it at the last reading: `last...` beside the figures of the greatest. */
function lasting(fall: Flag, lasts: Flag): Flag {
  const { minutes, systolicFall, diastolicFall } = lasts.figures;
  return {
    code: fall.code,
    figures: {
      ...fall.figures,
      ...(minutes === undefined ? {} : { lastMinutes: minutes }),
      ...(systolicFall === undefined ? {} : { lastSystolicFall: systolicFall }),
      ...(diastolicFall === undefined ? {} : { lastDiastolicFall: diastolicFall }),
    },
  };
}

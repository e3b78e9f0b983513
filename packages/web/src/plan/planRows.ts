import type { PlanResult, ProtocolResult } from '@evenfall/practice';
import type { Estimate, PlanRow } from '@evenfall/report';
import type { Words } from '@evenfall/words';

type Of = (result: ProtocolResult) => Estimate;

/** What is told of two ways of measuring, in the order in which it matters. */
export function planRows({ protocol, against }: PlanResult, words: Words): PlanRow[] {
  const row = (key: Parameters<typeof labelOf>[0], unit: PlanRow['unit'], of: Of): PlanRow => ({
    key,
    label: labelOf(key, words),
    unit,
    first: of(protocol),
    second: against === null ? null : of(against),
  });
  return [
    row('biasSystolic', 'mmHg', (one) => of(one.systolic.bias, one.standardErrors.systolic.bias)),
    row('biasDiastolic', 'mmHg', (one) => of(one.diastolic.bias, one.standardErrors.diastolic.bias)),
    row('sdSystolic', 'mmHg', (one) => of(one.systolic.sd, one.standardErrors.systolic.sd)),
    row('sdDiastolic', 'mmHg', (one) => of(one.diastolic.sd, one.standardErrors.diastolic.sd)),
    row('within5', 'share', (one) => of(one.systolic.within5, one.standardErrors.systolic.within5)),
    row('within10', 'share', (one) => of(one.systolic.within10, one.standardErrors.systolic.within10)),
    row('within15', 'share', (one) => of(one.systolic.within15, one.standardErrors.systolic.within15)),
    row('up', 'share', (one) => of(one.misclassified.up, one.standardErrors.misclassified.up)),
    row('down', 'share', (one) => of(one.misclassified.down, one.standardErrors.misclassified.down)),
  ];
}

function of(value: number | null, standardError: number | null): Estimate {
  return { value, standardError };
}

type Key =
  | 'biasSystolic'
  | 'biasDiastolic'
  | 'sdSystolic'
  | 'sdDiastolic'
  | 'within5'
  | 'within10'
  | 'within15'
  | 'up'
  | 'down';

function labelOf(key: Key, words: Words): string {
  return words.sentence(`plan.${key}`);
}

/** Differences smaller than this many of their errors may be chance. */
const SURE_ERRORS = 1.96;

/** Whether a difference is more than chance explains. */
export function isSurelyApart(mean: number, error: number): boolean {
  return Math.abs(mean) > SURE_ERRORS * error;
}

/** First minus second on the same people, with what each came to, a sentence for each; none where there is no pair. */
export function pairedLines({ protocol, against, paired }: PlanResult, words: Words): string[] {
  if (paired === null || against === null) return [];
  const says = (
    apart: `plan.${'systolic' | 'diastolic' | 'wrong' | 'minutes'}Apart`,
    { mean, standardError }: typeof paired.systolic.bias,
    of: (one: ProtocolResult) => number | null,
    text: (amount: number, error: null) => string,
    scale = 1,
  ) => {
    const alone = (one: ProtocolResult) => {
      const value = of(one);
      return value === null ? '–' : text(value, null);
    };
    return words.sentence('plan.pairedSay', {
      apart: words.sentence(apart, { amount: scale * mean, error: scale * standardError }),
      isSure: isSurelyApart(mean, standardError),
      first: alone(protocol),
      second: alone(against),
    });
  };
  const mmHg = (amount: number, error: null) => words.sentence('plan.mmHgText', { amount, error });
  const share = (amount: number, error: null) =>
    words.sentence('plan.shareText', { amount: 100 * amount, error });
  const minutes = (amount: number, error: null) => words.sentence('plan.minutesText', { amount, error });
  const wrong = ({ misclassified: { up, down } }: ProtocolResult) =>
    up === null || down === null ? null : up + down;
  return [
    says('plan.systolicApart', paired.systolic.bias, (one) => one.systolic.bias, mmHg),
    says('plan.diastolicApart', paired.diastolic.bias, (one) => one.diastolic.bias, mmHg),
    says('plan.wrongApart', paired.misclassified.apart, wrong, share, 100),
    says('plan.minutesApart', paired.minutes, (one) => one.minutes, minutes),
  ];
}

import type { AmbulatoryRules, Load, PressurePair, SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

type Limits = Pick<AmbulatoryRules, 'daySystolic' | 'dayDiastolic' | 'nightSystolic' | 'nightDiastolic'>;

/** A limit with the side of it that counts: `≥ 135`, `> 140`. */
export function sidedText({ comparison, limit }: SidedLimit, words: Words): string {
  return `${comparison === '>=' ? '≥' : '>'} ${words.say.limit(limit)}`;
}

/** On which side limits count: the same of all, or each by its sign. */
function sideOf(limits: readonly (SidedLimit | null)[]): 'least' | 'over' | 'mixed' {
  const sides = new Set(limits.flatMap((one) => (one === null ? [] : [one.comparison])));
  if (sides.size > 1) return 'mixed';
  return sides.has('>') ? 'over' : 'least';
}

function pairText(
  limits: readonly (SidedLimit | null)[],
  side: ReturnType<typeof sideOf>,
  words: Words,
): string {
  const text = (one: SidedLimit) => (side === 'mixed' ? sidedText(one, words) : words.say.limit(one.limit));
  return limits.map((one) => (one === null ? '-' : text(one))).join('/');
}

/** The load of a period, with its limit and the side that counts; null where a part of it is not known. */
export function periodLoadText(
  period: 'day' | 'night',
  load: Pick<Load, 'percent'> | null,
  rules: Limits,
  words: Words,
): string | null {
  const { systolic = null, diastolic = null } = load?.percent ?? {};
  if (systolic === null || diastolic === null) return null;
  const limits =
    period === 'day' ? [rules.daySystolic, rules.dayDiastolic] : [rules.nightSystolic, rules.nightDiastolic];
  const side = sideOf(limits);
  return words.sentence('series.loadOf', {
    period: words.title('period', period),
    systolic,
    diastolic,
    limit: pairText(limits, side, words),
    side,
  });
}

/** What the load of 24 hours is of, which is not the limit that it stands beside; null where there is none. */
export function loadText({ systolic, diastolic }: PressurePair, limits: Limits, words: Words): string | null {
  if (systolic === null && diastolic === null) return null;
  const [day, night] = [
    [limits.daySystolic, limits.dayDiastolic],
    [limits.nightSystolic, limits.nightDiastolic],
  ];
  const side = sideOf([...day, ...night]);
  return words.sentence('series.loadOfBoth', {
    systolic,
    diastolic,
    day: pairText(day, side, words),
    night: pairText(night, side, words),
    side,
  });
}

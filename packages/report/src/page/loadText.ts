import type { AmbulatoryRules, PressurePair, SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

type Limits = Pick<AmbulatoryRules, 'daySystolic' | 'dayDiastolic' | 'nightSystolic' | 'nightDiastolic'>;

/** What the load of 24 hours is of, which is not the limit that it stands beside; null where there is none. */
export function loadText({ systolic, diastolic }: PressurePair, limits: Limits, words: Words): string | null {
  if (systolic === null && diastolic === null) return null;
  const pair = (...both: (SidedLimit | null)[]) =>
    both.map((one) => (one === null ? '-' : words.say.limit(one.limit))).join('/');
  return words.sentence('series.loadOfBoth', {
    systolic,
    diastolic,
    day: pair(limits.daySystolic, limits.dayDiastolic),
    night: pair(limits.nightSystolic, limits.nightDiastolic),
  });
}

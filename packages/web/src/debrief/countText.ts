import type { ReportCode } from '@evenfall/physiology';
import type { Conduct, CountDebrief, RateRow, TapsDebrief } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** Whether a rate is accepted, in a sentence. */
export function rateVerdict(
  { written, had, truth, isAccepted, count, taps }: RateRow,
  { sentence }: Words,
): string {
  if (had !== null && taps !== null)
    return sentence(isAccepted ? 'counts.yesTaps' : 'counts.notTaps', { written, had });
  if (had === null || count === null)
    return sentence(isAccepted ? 'counts.yesBare' : 'counts.notBare', { written, truth });
  const held = { written, had, windowSeconds: count.windowSeconds };
  return sentence(isAccepted ? 'counts.yes' : 'counts.not', held);
}

/** What the window allowed, and how the rate lies beside the true one; nothing more of one with no count beside it. */
export function rateTexts(row: RateRow, { sentence }: Words): string[] {
  const { of, truth, withinPerMinute, isAccepted, isTrue, isGrave, count, taps } = row;
  const grave = isGrave ? [sentence(of === 'breaths' ? 'counts.grave-breaths' : 'counts.grave-pulse')] : [];
  const beside = isAccepted === isTrue ? 'truth' : isAccepted ? 'chance' : 'luck';
  const over = sentence(`counts.${beside}`, { truth });
  if (count === null && taps !== null)
    return [
      sentence('counts.tapped', tapsSaid(taps)),
      ...tapsNext(taps).map((one) => sentence(one)),
      over,
      ...grave,
    ];
  if (count === null) return grave;
  const { n, there, windowSeconds } = count;
  const stepPerMinute = 60 / windowSeconds;
  return [
    sentence('counts.counted', { n, there, windowSeconds }),
    sentence('counts.allows', { windowSeconds, stepPerMinute, withinPerMinute }),
    over,
    ...grave,
  ];
}

/** One thing to do differently: beats without a tap are told before taps too many. */
function tapsNext(taps: TapsDebrief) {
  const { missed, extra } = tapsSaid(taps);
  if (missed > 0) return ['counts.tapsNextMissed' as const];
  return extra > 0 ? ['counts.tapsNextExtra' as const] : [];
}

function tapsSaid({ taps, wanted, missed }: TapsDebrief) {
  const extra = taps.filter(({ isExtra }) => isExtra).length;
  return { taps: taps.length, there: wanted.length, missed: missed.length, extra };
}

/** What was noted of a rhythm beside what it was. */
export function rhythmText({ rhythm, noticed }: CountDebrief, { sentence }: Words): string {
  const said = noticed?.rhythmFelt ?? 'none';
  if (rhythm.ofPerson === 'irregular' && rhythm.inWindow === 'regular' && said !== 'irregular')
    return sentence('counts.rhythm-hidden');
  return sentence(`counts.rhythm-${said}-${rhythm.ofPerson}`);
}

/** What was noted of the strength of a pulse beside what it was; null: of this person nothing is to be said of it. */
export function strengthText(
  { noticed }: CountDebrief,
  report: readonly ReportCode[],
  { sentence }: Words,
): string | null {
  const was = report.includes('pulse-weak') ? 'weak' : report.includes('pulse-strong') ? 'strong' : null;
  if (was === null) return null;
  const said = noticed?.strength ?? null;
  const wasText = sentence(`counts.${was}`);
  if (said === null) return sentence('counts.strengthNone', { was: wasText });
  const strength = sentence(`counts.${said}`);
  return said === was
    ? sentence('counts.strengthRight', { strength })
    : sentence('counts.strengthWrong', { strength, was: wasText });
}

/** Whether a thing to do differently is of a count of this sign: it is said beside that count. */
export function isOfCount({ code }: Conduct, of: RateRow['of']): boolean {
  return code.startsWith(`${of}-`) && code !== 'apex-not-counted';
}

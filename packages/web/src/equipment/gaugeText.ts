import type { CheckStanding } from '@evenfall/clinical';
import type { EquipmentContent, GaugeLine } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { dayText } from '../app/times.js';

/** How one check of a gauge stands. */
export function checkText({ state, lastGoodDay, dueDay }: CheckStanding, words: Words): string {
  const day = (of: string | null) => (of === null ? '' : dayText(of, words));
  switch (state) {
    case 'good':
      return words.sentence('equipment.checkGood', { last: day(lastGoodDay), due: day(dueDay) });
    case 'overdue':
      return words.sentence('equipment.checkOverdue', { last: day(lastGoodDay), due: day(dueDay) });
    case 'disturbed':
      return words.sentence('equipment.checkDisturbed', { last: day(lastGoodDay) });
    case 'never':
      return words.sentence('equipment.checkNever');
    case 'failed':
      return words.sentence('equipment.checkFailed');
  }
}

/** What is said of a gauge beside how it stands: its name, kind, room, serial number and note. */
export function gaugeSaid(content: EquipmentContent, words: Words): string {
  if (content.what !== 'gauge') return '';
  const { name, type, room, serial, note } = content;
  return [name, words.title('gaugeType', type), room, serial, note].filter(Boolean).join(' · ');
}

type Logged = GaugeLine['entry']['content'];

/** What was done with a gauge. */
export function logTitle({ evidence }: Logged, words: Words): string {
  const { log } = evidence;
  return log.of === 'dropped' || log.of === 'repaired'
    ? words.title('gaugeEvent', log.of)
    : words.title('gaugeCheck', log.of);
}

/** What a line of the log comes to: the verdict and the number behind it. */
export function logText({ value }: Logged, words: Words): string {
  const verdict = words.sentence(
    value.verdict === 'good'
      ? 'equipment.resultGood'
      : value.verdict === 'failed'
        ? 'equipment.resultFailed'
        : value.verdict === 'incomplete'
          ? 'equipment.resultIncomplete'
          : 'equipment.resultNone',
  );
  const found = foundText(value, words);
  return found === null ? verdict : `${verdict}: ${found}`;
}

function foundText(
  { errorMmHg, errorAtMmHg, leakMmHgPerMinute }: Logged['value'],
  words: Words,
): string | null {
  if (leakMmHgPerMinute !== null) return words.sentence('equipment.loses', { perMinute: leakMmHgPerMinute });
  if (errorMmHg === null || errorAtMmHg === null) return null;
  if (errorMmHg === 0) return words.sentence('equipment.readRight');
  const figures = { byMmHg: Math.abs(errorMmHg), atMmHg: errorAtMmHg };
  return words.sentence(errorMmHg > 0 ? 'equipment.readHigh' : 'equipment.readLow', figures);
}

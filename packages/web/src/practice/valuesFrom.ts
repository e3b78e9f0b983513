import type { CountOf } from '@evenfall/clinical';
import { isVoidValue, type SignDraft, withMeasuring } from '../round/draft.js';
import type { Measuring } from '../round/measuring.js';
import type { PracticeDraft } from './keptPractice.js';

/** The exercise with the taking of a sign where it is now; a window or a tapping that begins says at which second of the visit. */
export function measuredIn(
  draft: PracticeDraft,
  sign: CountOf,
  measuring: Measuring,
  secondsAt: (ms: number) => number,
): PracticeDraft {
  const was = withValuesFrom(draft);
  return {
    ...was,
    round: withMeasuring(was.round, sign, measuring),
    ...(measuring.at === 'running'
      ? { countedFrom: { ...was.countedFrom, [sign]: secondsAt(measuring.startedAtMs) } }
      : {}),
    ...(measuring.at === 'tapping' && measuring.tapsMs.length === 1
      ? { tappedFrom: { ...was.tappedFrom, [sign]: secondsAt(measuring.tapsMs[0] as number) } }
      : {}),
  };
}

/** The last value of each sign has the start of what it was taken in, for good, whatever is begun and left afterwards. */
export function withValuesFrom(draft: PracticeDraft): PracticeDraft {
  const { round, apex, countedFrom, tappedFrom = {}, valuesFrom = {} } = draft;
  const signs: readonly (readonly [keyof typeof countedFrom, SignDraft | undefined])[] = [
    ['pulse', round.pulse],
    ['apex', apex],
    ['breaths', round.breaths],
  ];
  const added = signs.flatMap(([of, sign]) => {
    const last = sign?.values.findLast((value) => !isVoidValue(value));
    if (last === undefined || valuesFrom[last.entry] !== undefined) return [];
    const from = last.kind === 'taps' ? tappedFrom[of] : countedFrom[of];
    return from === undefined || from === null ? [] : [[last.entry, from] as const];
  });
  return added.length === 0
    ? draft
    : { ...draft, valuesFrom: { ...valuesFrom, ...Object.fromEntries(added) } };
}

import { doOverlap } from '@evenfall/clinical';
import type { SleepSaid } from '@evenfall/record';
import { clock } from '@evenfall/words';
import type { TextOf } from './weekGrid.js';

/** What the fields of the hours of sleep come to; `wrong` is what cannot stand so, as the key of its sentence. */
export type SleepTyped = SleepSaid & { readonly wrong: 'napAlone' | 'napWithin' | null };

/** Reads the hours asleep and of a nap. Without the night a nap would be taken for it: it is not read, and that is said. */
export function sleepTyped(text: TextOf): SleepTyped {
  const asleep = rangeOf(text('asleepFrom'), text('asleepTo'));
  const nap = rangeOf(text('napFrom'), text('napTo'));
  if (nap !== null && asleep === null) return { asleep, nap: null, wrong: 'napAlone' };
  return {
    asleep,
    nap,
    wrong: nap !== null && asleep !== null && doOverlap(asleep, nap) ? 'napWithin' : null,
  };
}

/** The fields as they stand for hours that were said; blank for what was not. */
export function sleepFields({ asleep, nap }: SleepSaid): Readonly<Record<string, string>> {
  const at = (minute: number | undefined) => (minute === undefined ? '' : clock(minute));
  return {
    asleepFrom: at(asleep?.from),
    asleepTo: at(asleep?.to),
    napFrom: at(nap?.from),
    napTo: at(nap?.to),
  };
}

/** Hours in minutes from midnight; null where one of them was not said, or both are one. */
function rangeOf(from: string, to: string): SleepSaid['asleep'] {
  const minutes = (time: string) => {
    const found = /^(\d{2}):(\d{2})/.exec(time);
    return found === null ? null : Number(found[1]) * 60 + Number(found[2]);
  };
  const [begins, ends] = [minutes(from), minutes(to)];
  return begins === null || ends === null || begins === ends ? null : { from: begins, to: ends };
}

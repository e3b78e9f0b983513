import { mostUrgent, type RecheckClass, recheckAfter } from '@evenfall/clinical';
import { pressureWritten } from '@evenfall/record';
import type { RoundDraft } from './draft.js';
import { runContentOf, type Signing } from './entries.js';
import { standingOf } from './standing.js';

/** What a round that nobody signed yet asks somebody to do at once. */
export type BegunAlarm = {
  /** Its readings as the trade writes them, in the order in which they were taken; none where another sign alarms. */
  readonly pressures: readonly string[];
  /** The most urgent condition that is acted on at once; null where the pressure is severe and none holds, or is known, yet. */
  readonly condition: string | null;
  /** How many more of them hold. */
  readonly others: number;
  /** Whether what a severe pressure asks was not answered. */
  readonly isUnasked: boolean;
  /** Why the pressure is looked at again, as of a round that was signed; null where it is not. */
  readonly recheck: string | null;
};

/**
 * The alarm of a round under way; null where nothing in it is severe, very low or acted on at once. What was taken counts
 * though nobody signed it.
 */
export function begunAlarm(
  draft: RoundDraft,
  under: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): BegunAlarm | null {
  const { content, unasked } = standingOf(draft, under);
  const { actNow = [], recheckClass = null } = content.value ?? {};
  const isAbnormalAlone = recheckClass === null || recheckClass === 'abnormal';
  if (actNow.length === 0 && isAbnormalAlone && unasked.length === 0) return null;
  return {
    pressures: draft.pressure.values.map((value) => pressureWritten(runContentOf(draft, value, under))),
    condition: mostUrgent(actNow.map(({ condition }) => condition)),
    others: Math.max(0, actNow.length - 1),
    isUnasked: unasked.length > 0,
    recheck: isAbnormalAlone
      ? null
      : (recheckAfter(recheckClass as RecheckClass, under.inForce.roundRules.recheck)[0]?.code ?? null),
  };
}

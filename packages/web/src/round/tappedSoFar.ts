import type { CountOf, TapSource } from '@evenfall/clinical';
import type { TapsContent } from '@evenfall/record';
import { NOTHING_NOTICED, type RoundDraft } from './draft.js';
import type { Signing } from './entries.js';
import { circumstancesBefore } from './facts.js';
import { tapRules } from './tapRulesLater.js';

/** What taps under way would be charted as if they stopped here: their value, and whether more is asked for. */
export function tappedSoFar(
  draft: RoundDraft,
  of: CountOf,
  { source, seconds }: { readonly source: TapSource; readonly seconds: readonly number[] },
  { facts, inForce, program }: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): TapsContent['value'] {
  const before = draft[of].values;
  const circumstances = circumstancesBefore(before, of, NOTHING_NOTICED, facts, inForce);
  const taps = { of, source, seconds };
  const done = { taps, repair: true, circumstances, override: null, note: null };
  return tapRules().chartTaps(done, inForce, program).value;
}

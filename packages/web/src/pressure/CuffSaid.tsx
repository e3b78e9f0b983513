import { Flags } from '../parts/Flags.js';
import type { Round } from '../round/useRound.js';
import { cuffFlags } from './cuffFlags.js';

/** That the cuff which is on has the wrong size, above all else while it can still be changed. */
export function CuffSaid({ round }: { readonly round: Round }) {
  return <Flags flags={cuffFlags(round.draft.pressure)} />;
}

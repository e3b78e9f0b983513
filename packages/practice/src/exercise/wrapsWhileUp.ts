import { pointer, type Refusal, refusal } from '@evenfall/clinical';
import {
  type Action,
  type Circumstances,
  circumstancesAfter,
  FLAT_MMHG,
  makePerson,
  startRig,
} from '@evenfall/physiology';
import type { Exercise } from './exercise.js';

/**
 * What no hand can do in a visit: another cuff or gauge taken, or the cuff wrapped anew or on the other arm, while there is air in it.
 * Each as a refusal at the JSON Pointer of its action, `impossible`; the visit is played on as if it had not been done.
 *
 * For a list from outside. What was kept is played as it was.
 */
export function wrapsWhileUp({
  scenario,
  seed,
  circumstances,
  instrument,
  actions,
}: Pick<Exercise, 'scenario' | 'seed' | 'circumstances' | 'instrument' | 'actions'>): Refusal[] {
  const refusals: Refusal[] = [];
  const rig = startRig(makePerson(scenario, seed), circumstances, instrument);
  let now = circumstances;
  let coming: Action[] = [];
  for (const [k, action] of actions.entries()) {
    const after = circumstancesAfter(now, action);
    const field = anewBy(action, now, after);
    if (field !== null && action.tick > rig.tick) {
      rig.advance(action.tick, coming);
      coming = coming.filter(({ tick }) => tick >= action.tick);
    }
    if (field !== null && rig.cuffMmHg >= FLAT_MMHG) {
      const got = (action as Readonly<Record<string, unknown>>)[field];
      refusals.push(
        refusal(pointer(pointer('/actions', k), field), 'impossible', 'cuff-empty', got, {
          figures: { cuffMmHg: rig.cuffMmHg },
        }),
      );
      continue;
    }
    now = after;
    coming.push(action);
  }
  return refusals;
}

/** By which field of an action the cuff comes off the arm or off its gauge; null: it stays. */
function anewBy(
  { kind }: Action,
  now: Circumstances,
  after: Circumstances,
): 'kind' | 'isCuffLoose' | 'arm' | null {
  if (kind === 'cuff' || kind === 'gauge') return 'kind';
  if (after.isCuffLoose !== now.isCuffLoose) return 'isCuffLoose';
  return after.arm === now.arm ? null : 'arm';
}

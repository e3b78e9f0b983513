import type { Costs } from './cost.js';
import type { Counterfactual } from './counterfactual.js';
import type { FaultCode } from './faults.js';

/** What can keep the sounds of a fall from an ear; what keeps all of them first. */
const HIDES: readonly FaultCode[] = [
  'chest-piece-away',
  'chest-piece-off',
  'noise',
  'too-fast',
  'not-heard',
  'under-cuff',
  'pressed-hard',
  'margin-small',
  'not-felt-first',
  'began-in-sounds',
];

const NOTHING = { systolic: Number.NaN, diastolic: Number.NaN };

/**
 * The costs of numbers that nothing was to be heard of: there is nothing to share out. The first fault that hid the sounds, so that
 * without it alone a first and a last one were there; where it took several, the first of them. Null: nobody could have heard any.
 */
export function unheardCosts(costs: Costs, visit: Counterfactual | null): Costs {
  const codes = costs.costs.map(({ code }) => code);
  const hiding = HIDES.filter((code) => codes.includes(code));
  /** Not with NaN, nor of one sound alone. */
  const isHeardBut = (present: readonly FaultCode[]) => {
    const { systolic, diastolic } = visit?.textbook(0, new Set(present)) ?? NOTHING;
    return systolic > diastolic;
  };
  const alone = hiding.find((code) => isHeardBut(codes.filter((one) => one !== code)));
  const first = isHeardBut([]) ? hiding[0] : undefined;
  return { ...unsharedCosts(costs), hidBy: alone ?? first ?? null };
}

/** The costs of numbers that are of nothing: no part of them is owed to anything. */
export function unsharedCosts(costs: Costs): Costs {
  return {
    ...costs,
    costs: costs.costs.map((one) => ({ ...one, systolic: null, diastolic: null })),
    left: null,
  };
}

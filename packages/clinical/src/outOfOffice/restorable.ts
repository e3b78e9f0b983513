import type { DropCode } from './homeResult.js';
import type { EditCode } from './recordingKept.js';

/** Why a reading was left out where no hand can put it back: it has no numbers, counts already, or is of another kind. */
const FOR_GOOD = ['duplicate', 'failed', 'wrist', 'after-24-hours'] as const satisfies readonly (
  | DropCode
  | EditCode
)[];
export type LeftForGood = (typeof FOR_GOOD)[number];

/** The reason why a reading that was left out cannot be put back by hand; null for one that can. */
export function leftForGood(code: string): LeftForGood | null {
  return FOR_GOOD.find((one) => one === code) ?? null;
}

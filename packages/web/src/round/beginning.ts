import {
  type CountOf,
  isAnswered,
  type RoundSign,
  SIGNS,
  type SignOf,
  wantedSigns,
} from '@evenfall/clinical';
import type { Beginning, Identity, InForce } from '@evenfall/record';
import { withPressureNotDone } from '../pressure/pressureSteps.js';
import { type RoundDraft, withMeasureNotDone, withNotDone } from './draft.js';
import { SIGNS_IN_ORDER } from './measuring.js';
import type { RoundStanding } from './standing.js';

/** The usual: the person said who they are, agreed, and needed nobody else. */
export function usualBeginning({ birthDate, number }: Identity): Beginning {
  return {
    identifiers: [
      'name',
      ...(birthDate === null ? [] : (['birth-date'] as const)),
      ...(number === null ? [] : (['number'] as const)),
    ],
    consent: 'agreed',
    chaperone: 'not-needed',
    interpreter: 'not-needed',
    who: null,
  };
}

/** The round begun. Who declined has every sign declined that is wanted and was not taken: that is charted. */
export function withBeginning(
  draft: RoundDraft,
  begun: Beginning,
  state: RoundStanding['state'],
  { roundRules }: InForce,
): RoundDraft {
  const checked = { ...draft, isIdentityChecked: true, begun };
  if (begun.consent !== 'declined') return checked;
  return wantedSigns(state, roundRules.plan)
    .filter((sign) => !isAnswered(state, sign))
    .reduce(withDeclined, checked);
}

const DECLINED = { reason: 'declined', text: null } as const;

function withDeclined(draft: RoundDraft, sign: RoundSign): RoundDraft {
  if (sign === 'pressure') return withPressureNotDone(draft, DECLINED);
  if (isCounted(sign)) return withNotDone(draft, sign, DECLINED);
  return isMeasured(sign) ? withMeasureNotDone(draft, sign, DECLINED) : draft;
}

function isCounted(sign: RoundSign): sign is CountOf {
  return (SIGNS_IN_ORDER as readonly RoundSign[]).includes(sign);
}

function isMeasured(sign: RoundSign): sign is SignOf {
  return (SIGNS as readonly RoundSign[]).includes(sign);
}

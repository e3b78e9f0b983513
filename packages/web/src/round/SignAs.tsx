import type { SignedInHere } from '@evenfall/api';
import type { Book, Role } from '@evenfall/record';
import { useState } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { useMay, useMeasuring, useSignedIn } from '../signIn/useAccess.js';
import type { RoundDraft } from './draft.js';
import { isKnownLearner, withLearner } from './learning.js';

/** The roles in which somebody signs what they measured; an importer's come from a file. */
const SIGNING_ROLES = {
  care: ['observer', 'supervisor'],
  class: ['observer', 'teacher', 'assessor'],
  simulated: ['observer', 'teacher', 'assessor'],
} as const satisfies Record<Book, readonly Role[]>;

/** Who signs on this device now; `agent` is null until somebody was chosen. */
export type Signer = {
  readonly agent: string | null;
  readonly role: Role;
  /** A learner's round is preliminary. */
  readonly isPreliminary: boolean;
  /** Whether the round stays so, whoever signs it. */
  readonly isOfLearner: boolean;
  readonly chooseRole: (role: Role) => void;
  /** Whether they are learning: that they are stays said on this device, that they are not holds for this signature. */
  readonly chooseLearning: (isLearning: boolean) => void;
};

/**
 * Who signs, in what role. Learning belongs to whoever measures, not to the device or to the round, and a role to one
 * signature: the next one is taken for neither.
 */
export function useSigner(draft?: Pick<RoundDraft, 'isOfLearner'>): Signer {
  const agent = useMeasuring();
  const who = useSignedIn();
  const isLearner = isOnlyLearning(who);
  const { store } = useApp();
  const isOfLearner = draft?.isOfLearner === true;
  const isKnown = useKept((state) => isKnownLearner(agent, state));
  const [denied, setDenied] = useState<string | null>(null);
  const isPreliminary = isLearner || (isKnown && denied !== agent) || isOfLearner;
  const [chosen, setChosen] = useState<{ readonly by: string | null; readonly role: Role } | null>(null);
  const role = isPreliminary || chosen?.by !== agent ? 'observer' : (chosen?.role ?? 'observer');
  const chooseLearning = (isLearning: boolean) => {
    setDenied(isLearning ? null : agent);
    store.change((state) => ({ ...state, kept: withLearner(state.kept, agent, isLearning) }));
  };
  const chooseRole = (next: Role) => setChosen({ by: agent, role: next });
  return { agent, role, isPreliminary, isOfLearner, chooseRole, chooseLearning };
}

/** The fields of whoever signs. */
export function SignAs({ signer }: { readonly signer: Signer }) {
  const { words } = useApp();
  const { book } = useBook();
  const { agent, role, isPreliminary, isOfLearner, chooseRole, chooseLearning } = signer;
  const who = useSignedIn();
  const isLearner = isOnlyLearning(who);
  // In a class a device is passed round: whoever supervises or assesses does so in their own name.
  const isOwn = who === null || who.agent.id === agent;
  const isSupervisor = useMay('supervisor') && isOwn;
  const choices = SIGNING_ROLES[book].filter((one) => one === 'observer' || isSupervisor);
  return (
    <>
      <WhoMeasures />
      <label className="tick">
        <input
          type="checkbox"
          checked={isPreliminary}
          disabled={agent === null || isLearner || isOfLearner}
          onChange={({ target }) => chooseLearning(target.checked)}
        />
        <span>{words.sentence('review.asLearner')}</span>
      </label>
      {isPreliminary ? (
        <p className="notice">{words.sentence('review.preliminary')}</p>
      ) : choices.length < 2 ? null : (
        <Field label={words.sentence('review.signAs')}>
          {(control) => (
            <select
              {...control}
              value={role}
              onChange={({ target }) => chooseRole(choices.find((one) => one === target.value) ?? 'observer')}
            >
              {choices.map((one) => (
                <option key={one} value={one}>
                  {words.sentence(one === 'observer' && book === 'care' ? 'roles.clinician' : `roles.${one}`)}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
    </>
  );
}

/** An account that is a learner’s and nothing more: its rounds wait for a supervisor, whatever is ticked. */
function isOnlyLearning(who: SignedInHere | null): boolean {
  return who !== null && !who.roles.some((role) => role === 'clinician' || role === 'supervisor');
}

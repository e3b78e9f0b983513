import { isOfCuff, PREPARATION, type Preparation } from '@evenfall/clinical';
import { useRef } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { nextHref } from './nextHref.js';
import { isRestOpen, RestStart } from './RestStart.js';
import { type InRound, RoundFrame } from './RoundFrame.js';
import { restOf, tickedBeside, withoutRestBefore } from './restDraft.js';
import { useBelow } from './useBelow.js';
import { useCameFrom } from './useCameFrom.js';
import { useNextStep } from './useNextStep.js';
import type { Round } from './useRound.js';

/** Making the person ready: one touch if all was as it should be. What a fault costs is not said here. */
export function PreparePage({ person }: { readonly person: string }) {
  const { words } = useApp();
  return (
    <RoundFrame person={person} title={words.sentence('prepare.title')}>
      {(shown) => <PrepareForm {...shown} person={person} />}
    </RoundFrame>
  );
}

function PrepareForm({ round, record, person }: InRound & { readonly person: string }) {
  const { words } = useApp();
  const [, go] = useLocation();
  const cameFrom = useCameFrom(person);
  const form = useForm(`prepare ${round.draft.round}`, { ticked: (round.draft.exceptions ?? []).join(' ') });
  const isCuffOn = round.draft.pressure.place !== null;
  // What is of the cuff is asked where it is put on.
  const asked = PREPARATION.filter((one) => isCuffOn || !isOfCuff(one));
  const ticked = form.text('ticked').split(' ');
  const chosen = tickedBeside(
    PREPARATION.filter((one) => ticked.includes(one)),
    round.draft.rest,
  );
  const nextStep = useNextStep();
  const list = useRef<HTMLFieldSetElement>(null);
  const foot = useRef<HTMLDivElement>(null);
  const below = useBelow(list, foot, '.tick');
  // Kept at once: what comes next may have to be fetched first.
  const keep = (exceptions: readonly Preparation[]) => {
    // Of a set that was typed its cuff is asked here.
    round.change((draft) => ({
      ...draft,
      exceptions,
      pressure: isCuffOn ? { ...draft.pressure, isCuffAsked: true } : draft.pressure,
    }));
    form.done();
    nextStep({ ...round.draft, exceptions }, round, ({ step }) =>
      go(cameFrom?.href ?? nextHref(person, step), { replace: true }),
    );
  };
  return (
    <>
      <FactsOfRound record={record} round={round} />
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          keep(chosen);
        }}
      >
        <RestHere round={round} />
        <fieldset className="ticks ticks-two" ref={list}>
          <legend>{words.sentence('prepare.exceptions')}</legend>
          {asked.map((one) => (
            <label key={one} className="tick">
              <input
                type="checkbox"
                checked={chosen.includes(one)}
                onChange={({ target }) => {
                  const now = target.checked ? [...chosen, one] : chosen.filter((other) => other !== one);
                  form.set('ticked', now.join(' '));
                  if (one === 'rested' && target.checked) round.change(withoutRestBefore);
                }}
              />
              <span>{words.sentence(`prepare.${one}`)}</span>
            </label>
          ))}
        </fieldset>
        <div className="next-steps one-step" ref={foot}>
          {below === 0 ? null : (
            <p className="small soft ready-below">{words.sentence('prepare.below', { points: below })}</p>
          )}
          <button type="submit" className="button button-first button-large">
            {words.sentence(
              chosen.length > 0 ? 'prepare.keep' : isCuffOn ? 'prepare.all' : 'prepare.allSoFar',
            )}
          </button>
        </div>
      </form>
    </>
  );
}

/** How long it takes, and the rest where it can begin; what became of it stands in the line of the rest. */
function RestHere({ round }: { readonly round: Round }) {
  const { words } = useApp();
  const { rest } = round.draft;
  if (rest !== null)
    return restOf(rest) === null ? <p role="status">{words.sentence('rest.restsNow')}</p> : null;
  return (
    <>
      <p>{words.sentence('prepare.lead')}</p>
      {isRestOpen(round) ? <RestStart round={round} /> : null}
    </>
  );
}

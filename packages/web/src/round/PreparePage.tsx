import { PREPARATION, type Preparation } from '@evenfall/clinical';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { nextHref } from './nextHref.js';
import { type InRound, RoundFrame } from './RoundFrame.js';
import { begunRest } from './restDraft.js';
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
  const [ticked, setTicked] = useState<readonly Preparation[] | null>(null);
  const isCuffOn = round.draft.pressure.place !== null;
  const chosen = ticked ?? round.draft.exceptions ?? [];
  const nextStep = useNextStep();
  const list = useRef<HTMLFieldSetElement>(null);
  const foot = useRef<HTMLDivElement>(null);
  const below = useBelow(list, foot, '.tick');
  const keep = (exceptions: readonly Preparation[]) =>
    nextStep({ ...round.draft, exceptions }, round, ({ step }) => {
      round.change((draft) => ({ ...draft, exceptions }));
      go(cameFrom?.href ?? nextHref(person, step), { replace: true });
    });
  return (
    <>
      <FactsOfRound record={record} round={round} />
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          keep(PREPARATION.filter((one) => chosen.includes(one)));
        }}
      >
        <RestStart round={round} />
        <fieldset className="ticks ticks-two" ref={list}>
          <legend>{words.sentence('prepare.exceptions')}</legend>
          {PREPARATION.map((one) => (
            <label key={one} className="tick">
              <input
                type="checkbox"
                checked={chosen.includes(one)}
                onChange={(event) =>
                  setTicked(event.target.checked ? [...chosen, one] : chosen.filter((other) => other !== one))
                }
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

/** The person sits down now: the rest begins, and nobody waits for it on a page. */
function RestStart({ round }: { readonly round: Round }) {
  const { words, clock, session } = useApp();
  const { rest, pressure } = round.draft;
  const { restSeconds } = round.inForce.roundRules.plan;
  if (rest !== null) return <p role="status">{words.sentence('rest.restsNow')}</p>;
  const lead = <p>{words.sentence('prepare.lead')}</p>;
  if (!(restSeconds > 0) || pressure.values.length > 0) return lead;
  return (
    <>
      {lead}
      <button
        type="button"
        className="button button-large"
        onClick={() =>
          round.change((draft) => ({
            ...draft,
            rest: begunRest(restSeconds, { session, atMs: clock.monotonicMs() }),
          }))
        }
      >
        {words.sentence('rest.start', { seconds: restSeconds })}
      </button>
    </>
  );
}

import { PREPARATION, type Preparation } from '@evenfall/clinical';
import { useState } from 'react';
import { Redirect, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { nextHref } from './nextHref.js';
import { standingOf } from './standing.js';
import { useDraft, useInForce, useRecord, useRound } from './useRound.js';

/** Making the person ready: one touch if all was as it should be. What a fault costs is not said here. */
export function PreparePage({ person }: { readonly person: string }) {
  const { words, program } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useRound(person);
  const [, go] = useLocation();
  const [ticked, setTicked] = useState<readonly Preparation[] | null>(null);
  const hasDraft = useDraft(person) !== undefined;
  if (!hasDraft) return <Redirect to={`/people/${person}`} replace />;
  if (round !== null && !round.draft.isIdentityChecked)
    return <Redirect to={`/people/${person}/round`} replace />;
  const chosen = ticked ?? round?.draft.exceptions ?? [];
  const keep = (exceptions: readonly Preparation[]) => {
    if (round === null) return;
    const next = { ...round.draft, exceptions };
    round.change((draft) => ({ ...draft, exceptions }));
    go(nextHref(person, standingOf(next, { ...round, program }).next.step), { replace: true });
  };
  return (
    <Page
      title={words.sentence('prepare.title')}
      heading={
        <span className="measure-heading">
          <span>{nameIn(asked.value)}</span>
          <span className="measure-sign">{words.sentence('prepare.title')}</span>
        </span>
      }
      under={<IdentityOf record={asked.value} />}
      back={{ href: `/people/${person}/round`, text: words.sentence('review.round') }}
    >
      <Asking asked={asked} again={again}>
        {(record) => (
          <Asking asked={rules.asked} again={rules.again}>
            {() => (
              <form
                className="form"
                onSubmit={(event) => {
                  event.preventDefault();
                  keep(PREPARATION.filter((one) => chosen.includes(one)));
                }}
              >
                {round === null ? null : <FactsOfRound record={record} round={round} />}
                <p>{words.sentence('prepare.lead')}</p>
                <button
                  type="button"
                  className={`button button-thumb${chosen.length === 0 ? ' button-first' : ''}`}
                  onClick={() => keep([])}
                >
                  {words.sentence('prepare.all')}
                </button>
                <fieldset className="ticks">
                  <legend>{words.sentence('prepare.exceptions')}</legend>
                  {PREPARATION.map((one) => (
                    <label key={one} className="tick">
                      <input
                        type="checkbox"
                        checked={chosen.includes(one)}
                        onChange={(event) =>
                          setTicked(
                            event.target.checked ? [...chosen, one] : chosen.filter((other) => other !== one),
                          )
                        }
                      />
                      <span>{words.sentence(`prepare.${one}`)}</span>
                    </label>
                  ))}
                </fieldset>
                {chosen.length === 0 ? null : (
                  <button type="submit" className="button button-first button-large">
                    {words.sentence('prepare.keep')}
                  </button>
                )}
              </form>
            )}
          </Asking>
        )}
      </Asking>
    </Page>
  );
}

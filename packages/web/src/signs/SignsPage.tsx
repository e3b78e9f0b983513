import { SIGNS, type SignOf, wantedSigns } from '@evenfall/clinical';
import type { StoredEntry } from '@evenfall/record';
import { useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { signText } from '../app/signText.js';
import { FactsLines } from '../facts/FactsLines.js';
import { prescriberOfScaleTwo } from '../facts/factsOn.js';
import { localDate } from '../ports/stampAt.js';
import { PostureClock } from '../pressure/LyingClock.js';
import { nextHref } from '../round/nextHref.js';
import { ActNowPanel } from '../round/ResultPanels.js';
import { RoundFrame } from '../round/RoundFrame.js';
import { SoFar } from '../round/SoFar.js';
import { standingOf } from '../round/standing.js';
import { useCameFrom } from '../round/useCameFrom.js';
import { entriesIn, type Round } from '../round/useRound.js';
import { SignSection } from './SignSection.js';
import { signsForm } from './signsForm.js';
import { oxygenTarget, unkeptSigns } from './typedSign.js';

/** The signs of a round that are neither counted nor taken with a cuff: those that are wanted first. */
export function SignsPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  return (
    <RoundFrame
      person={person}
      title={words.sentence('signs.title')}
      isBare
      slipPage="signs"
      alsoUnder={(round) => <PostureClock round={round} />}
      soFar={(round) => <SoFar round={round} leftOut={['measures']} />}
    >
      {({ round, record }) => <Sections round={round} person={person} entries={entriesIn(record)} />}
    </RoundFrame>
  );
}

type SectionsProps = {
  readonly round: Round;
  readonly person: string;
  readonly entries: readonly StoredEntry[];
};

function Sections({ round, person, entries }: SectionsProps) {
  const { words, program } = useApp();
  const day = localDate(round.draft.begunAt);
  const form = useForm(signsForm(round.draft.round));
  const fields = useKept(({ kept }) => kept.forms[signsForm(round.draft.round)]?.fields);
  const standing = standingOf(round.draft, { ...round, program });
  const { state, next } = standing;
  const target = oxygenTarget(prescriberOfScaleTwo(entries, day), round.facts.ageMonths);
  const wanted = wantedSigns(state, round.inForce.roundRules.plan);
  const first = SIGNS.filter((of) => wanted.includes(of));
  const others = SIGNS.filter((of) => !wanted.includes(of));
  // What is kept, typed or said of a sign stands open when the page is come back to.
  const [open] = useState<readonly SignOf[]>(() => [
    ...unkeptSigns(fields ?? {}),
    ...round.draft.measures.map(({ sign }) => sign.of),
    ...(Object.keys(round.draft.measuresNotDone) as SignOf[]),
  ]);
  const cameFrom = useCameFrom(person);
  const isHere = SIGNS.some((of) => of === next.step);
  return (
    <>
      <FactsLines entries={entries} day={day} />
      <div className="signs">
        <p className="soft small">{words.sentence('signs.unitsHint')}</p>
        {first.map((of) => (
          <section key={of} className="sign-review" aria-label={signText(of, words)}>
            <h2>{signText(of, words)}</h2>
            <SignSection of={of} round={round} form={form} target={target} />
          </section>
        ))}
        {others.length === 0 ? null : (
          <section className="sign-review" aria-label={words.sentence('signs.also')}>
            <h2>{words.sentence('signs.also')}</h2>
            <p className="soft small">{words.sentence('signs.alsoHint')}</p>
            <div>
              {others.map((of) => (
                <details key={of} className="sign-also" open={open.includes(of)}>
                  <summary>
                    <h3>{signText(of, words)}</h3>
                  </summary>
                  <SignSection of={of} round={round} form={form} target={target} />
                </details>
              ))}
            </div>
          </section>
        )}
        <ActNowPanel standing={standing} />
        {isHere && cameFrom === null ? null : (
          <div className="next-steps">
            <Link href={cameFrom?.href ?? nextHref(person, next.step)} className="button button-large">
              {cameFrom === null
                ? words.sentence('review.goOnWith', { text: words.title('step', next.step) })
                : words.sentence('rest.back')}
            </Link>
          </div>
        )}
      </div>
    </>
  );
}

import { useEffect, useRef } from 'react';
import { Redirect } from 'wouter';
import { useApp } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { type Round, useDraft, useInForce, useRecord, useRound } from '../round/useRound.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { FeelPanel } from './FeelPanel.js';
import { NumbersPanel } from './NumbersPanel.js';
import { PlacePanel } from './PlacePanel.js';
import { PumpPanel } from './PumpPanel.js';
import { ReadingPanel } from './ReadingPanel.js';

/** Where the pressure is taken. Earlier readings stay hidden until the new one is in. */
export function PressurePage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useRound(person);
  const hasDraft = useDraft(person) !== undefined;
  if (!hasDraft) return <Redirect to={`/people/${person}`} replace />;
  if (round !== null && !round.draft.isIdentityChecked)
    return <Redirect to={`/people/${person}/round`} replace />;
  return (
    <Page
      title={words.sentence('app.pressure')}
      heading={
        <span className="measure-heading">
          <span>{nameIn(asked.value)}</span>
          <span className="measure-sign">{words.sentence('app.pressure')}</span>
        </span>
      }
      under={<IdentityOf record={asked.value} />}
      back={{ href: `/people/${person}/round`, text: words.sentence('review.round') }}
      isBare
    >
      <Asking asked={asked} again={again}>
        {(record) => (
          <Asking asked={rules.asked} again={rules.again}>
            {() => (round === null ? null : <Panel round={round} person={person} record={record} />)}
          </Asking>
        )}
      </Asking>
    </Page>
  );
}

type PanelProps = {
  readonly round: Round;
  readonly person: string;
  readonly record: { readonly entries: readonly unknown[] };
};

function Panel({ round, person, record }: PanelProps) {
  const stage = useRef<HTMLDivElement>(null);
  const { at } = round.draft.pressure.measuring;
  useWakeLock(at === 'typing' || at === 'ready');
  useEffect(() => {
    if (at !== undefined && document.activeElement === document.body)
      stage.current?.focus({ preventScroll: true });
  }, [at]);
  return (
    <div className="measure-stage" ref={stage} tabIndex={-1}>
      <PanelAt round={round} person={person} record={record} />
    </div>
  );
}

function PanelAt({ round, person, record }: PanelProps) {
  const { place, measuring } = round.draft.pressure;
  if (place === null || measuring.at === 'place')
    return (
      <>
        <FactsOfRound record={record} round={round} />
        <PlacePanel round={round} person={person} />
      </>
    );
  switch (measuring.at) {
    case 'feel':
      return <FeelPanel round={round} place={place} typed={measuring.typed} />;
    case 'ready':
      return <PumpPanel round={round} place={place} />;
    case 'typing':
      return <NumbersPanel round={round} place={place} measuring={measuring} />;
    case 'shown':
      return <ReadingPanel round={round} entry={measuring.entry} person={person} />;
  }
}

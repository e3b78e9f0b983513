import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { type InRound, RoundFrame } from '../round/RoundFrame.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { FeelPanel } from './FeelPanel.js';
import { NumbersPanel } from './NumbersPanel.js';
import { PlacePanel } from './PlacePanel.js';
import { PumpPanel } from './PumpPanel.js';
import { ReadingPanel } from './ReadingPanel.js';

/** Where the pressure is taken. Earlier readings stay hidden until the new one is in. */
export function PressurePage({ person }: { readonly person: string }) {
  const { words } = useApp();
  return (
    <RoundFrame person={person} title={words.sentence('app.pressure')} isBare>
      {(shown) => <Panel {...shown} person={person} />}
    </RoundFrame>
  );
}

type PanelProps = InRound & { readonly person: string };

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

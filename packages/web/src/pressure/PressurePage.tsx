import { useEffect, useRef } from 'react';
import { useApp, useKept } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { useIsWide } from '../parts/useIsWide.js';
import { asidePages } from '../round/asideLater.js';
import { GoOn } from '../round/GoOn.js';
import type { LeftOut } from '../round/leftOut.js';
import { RestPanel } from '../round/RestPanel.js';
import { type InRound, RoundFrame } from '../round/RoundFrame.js';
import { isWaitedFor, restedSeconds } from '../round/restDraft.js';
import { SoFar } from '../round/SoFar.js';
import type { Round } from '../round/useRound.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { useSecond } from '../second/useSecond.js';
import { CuffSaid } from './CuffSaid.js';
import { FeelPanel } from './FeelPanel.js';
import { ListenPanel } from './ListenPanel.js';
import { listeningBroken } from './marks.js';
import { NumbersPanel } from './NumbersPanel.js';
import { PlacePanel } from './PlacePanel.js';
import { PumpPanel } from './PumpPanel.js';
import { reopenedReading } from './pressureDraft.js';
import { withPressureAt } from './pressureSteps.js';
import { ReadingPanel } from './ReadingPanel.js';
import { SecondListenPanel } from './SecondListenPanel.js';
import { useNow } from './useNow.js';

/** Where the pressure is taken. Earlier readings stay hidden until the new one is in. */
export function PressurePage({ person }: { readonly person: string }) {
  const { words } = useApp();
  return (
    <RoundFrame
      person={person}
      title={words.sentence('app.pressure')}
      isBare
      slipPage="pressure"
      showsRest={waitsForRest}
      soFar={(round) => <SoFar round={round} {...besideReading(round)} />}
    >
      {(shown) => (
        <>
          <Facts {...shown} />
          <Panel round={shown.round} person={person} />
        </>
      )}
    </RoundFrame>
  );
}

/** Whether the cuff is on and would go up, but for the rest. */
function waitsForRest({ draft: { rest, pressure } }: Round): boolean {
  const { place, measuring } = pressure;
  return (
    rest !== null &&
    rest.since !== null &&
    place !== null &&
    (measuring.at === 'feel' || measuring.at === 'ready')
  );
}

/** An earlier reading stays hidden until the new one is in, and with it all that is made of it. */
function besideReading({ draft: { pressure } }: Round): {
  readonly leftOut: readonly LeftOut[];
  readonly shown: string | null;
} {
  const { measuring } = pressure;
  return measuring.at === 'shown'
    ? { leftOut: [], shown: measuring.entry }
    : { leftOut: ['pressure'], shown: null };
}

/** What is known of the person: before the cuff goes on and before it goes up; where there is room, all along. */
function Facts({ round, record }: InRound) {
  const { place, measuring } = round.draft.pressure;
  const isBefore = place === null || measuring.at === 'place' || measuring.at === 'ready';
  const isWide = useIsWide();
  return isBefore || isWide ? <FactsOfRound record={record} round={round} /> : null;
}

type PanelProps = InRound & { readonly person: string };

function Panel({ round, person }: Omit<PanelProps, 'record'>) {
  const stage = useRef<HTMLDivElement>(null);
  const { session } = useApp();
  const { measuring } = round.draft.pressure;
  const { at } = measuring;
  const isStale = measuring.at === 'listening' && measuring.session !== session;
  const isStanding = (round.draft.pressure.upright ?? null) !== null;
  useWakeLock(isStanding || at === 'typing' || at === 'ready' || at === 'listening' || at === 'reading');
  useEffect(() => {
    if (isStale)
      round.change((draft) => {
        const { measuring: now } = draft.pressure;
        return now.at === 'listening' ? withPressureAt(draft, listeningBroken(now)) : draft;
      });
  }, [isStale, round.change]);
  useEffect(() => {
    // Each step begins at its top, however far the one before was scrolled.
    if (at !== undefined) window.scrollTo(0, 0);
    if (at !== undefined && document.activeElement === document.body)
      stage.current?.focus({ preventScroll: true });
  }, [at]);
  if (isStale) return null;
  return (
    <div className="measure-stage" ref={stage} tabIndex={-1}>
      <CuffSaid round={round} />
      <PanelAt round={round} person={person} />
    </div>
  );
}

function PanelAt({ round, person }: Omit<PanelProps, 'record'>) {
  const { measuring } = round.draft.pressure;
  // A reading that is put right was taken where it was taken, wherever the cuff is now.
  const place = reopenedReading(round.draft.pressure)?.place ?? round.draft.pressure.place;
  const hearing = useKept(({ kept }) => kept.hearing);
  const isUnderWay = measuring.at === 'listening' && measuring.second !== undefined;
  const other = useSecond({
    isAsked: isUnderWay || (measuring.at === 'ready' && hearing === 'second'),
    mayStay: hearing === 'second',
    runAtMs: isUnderWay ? measuring.inflatedAt.atMs : null,
  });
  const { rest } = round.draft;
  const now = useNow(rest !== null && rest.since !== null, 1000);
  if (place === null || measuring.at === 'place') return <PlacePanel round={round} person={person} />;
  if (waitsForRest(round) && isWaitedFor(rest, now))
    return <RestPanel round={round} rest={rest} seconds={restedSeconds(rest, now)} />;
  switch (measuring.at) {
    case 'feel':
      return <FeelPanel round={round} place={place} typed={measuring.typed} />;
    case 'ready':
      return <PumpPanel round={round} place={place} other={other} />;
    case 'typing':
      return <NumbersPanel round={round} place={place} measuring={measuring} />;
    case 'listening':
      return measuring.second === undefined ? (
        <ListenPanel round={round} place={place} measuring={measuring} />
      ) : (
        <SecondListenPanel round={round} place={place} measuring={measuring} second={other.second} />
      );
    case 'reading':
      return (
        <GoOn part={asidePages}>
          {({ ReadBackPanel }) => <ReadBackPanel round={round} place={place} measuring={measuring} />}
        </GoOn>
      );
    case 'shown':
      return <ReadingPanel round={round} entry={measuring.entry} person={person} />;
  }
}

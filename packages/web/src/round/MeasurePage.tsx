import type { CountOf } from '@evenfall/clinical';
import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { tapPages } from './asideLater.js';
import { isVoidValue, withNotDone } from './draft.js';
import { GoOn } from './GoOn.js';
import { goOnPages } from './goOnLater.js';
import type { Measuring } from './measuring.js';
import { isTimed } from './measuring.js';
import { NotDoneHere } from './NotDoneHere.js';
import { nextHref } from './nextHref.js';
import { reasonsOf } from './notDoneReasons.js';
import type { PanelProps } from './panelProps.js';
import { ReadyPanel } from './ReadyPanel.js';
import { RoundFrame } from './RoundFrame.js';
import { RunningPanel } from './RunningPanel.js';
import { ShownAtOnce } from './ShownAtOnce.js';
import { SoFarHere } from './SoFarHere.js';
import { TypingPanel } from './TypingPanel.js';
import { useInterruption } from './useInterruption.js';
import { useNextStep } from './useNextStep.js';
import { type Round, revived } from './useRound.js';
import { useWakeLock } from './useWakeLock.js';
import { VoidPanel } from './VoidPanel.js';
import { Ways } from './Ways.js';

type MeasureProps = { readonly person: string; readonly sign: CountOf };

/**
 * Where one sign is taken. It looks the same for every sign, since a person who sees that breaths are counted
 * breathes otherwise; earlier values stay hidden until the new one is in.
 */
export function MeasurePage({ person, sign }: MeasureProps) {
  const { words } = useApp();
  return (
    <RoundFrame
      person={person}
      title={signText(sign, words)}
      beside={(round) => <SignBeside round={round} sign={sign} />}
      isBare
      isRestQuiet={({ draft }) => isTimed(draft[sign].measuring)}
      slipPage={sign}
      alsoUnder={(round) => <PostureTime round={round} sign={sign} />}
      soFar={(round) =>
        round.draft[sign].measuring.at === 'shown' ? <SoFarHere round={round} leftOut={[sign]} /> : null
      }
    >
      {({ round, record }) => (
        <>
          <FactsOfRound record={record} round={round} />
          <Panel round={round} sign={sign} person={person} />
        </>
      )}
    </RoundFrame>
  );
}

/** How long the person stands or lies, where that is counted; not while somebody counts beats or breaths. */
function PostureTime({ round, sign }: PanelProps) {
  const { pressure, [sign]: taken } = round.draft;
  const { upright = null, lying = null } = pressure;
  if ((upright === null && lying === null) || isTimed(taken.measuring)) return null;
  return <GoOn part={goOnPages}>{({ PostureClock }) => <PostureClock round={round} />}</GoOn>;
}

/** Until there is a value nothing to be seen says that it is the breaths; a voice still does, into an ear. */
function SignBeside({ round, sign }: { readonly round: Round | null; readonly sign: CountOf }) {
  const { words } = useApp();
  const isQuiet = sign === 'breaths' && round?.draft.breaths.measuring.at !== 'shown';
  return (
    <>
      {isQuiet ? <span aria-hidden="true">{words.sentence('count.secondCount')}</span> : null}
      <span className={isQuiet ? 'unseen' : undefined}>{signText(sign, words)}</span>
    </>
  );
}

function Panel({ round, sign, person }: PanelProps & { readonly person: string }) {
  const { session } = useApp();
  const stage = useRef<HTMLDivElement>(null);
  const { measuring } = round.draft[sign];
  const { at } = measuring;
  const isStale = 'session' in measuring && measuring.session !== session;
  useInterruption(round, sign);
  useWakeLock(isTimed(measuring));
  useEffect(() => {
    if (isStale) round.keep((draft, start) => revived(draft, session, start));
  }, [isStale, round, session]);
  useEffect(() => {
    // A panel that took the focus with it gives it to the next one, so that a keyboard goes on from here.
    if (at !== undefined && document.activeElement === document.body)
      stage.current?.focus({ preventScroll: true });
  }, [at]);
  if (isStale) return null;
  return (
    <div className="measure-stage" ref={stage} tabIndex={-1}>
      <PanelAt round={round} sign={sign} person={person} />
    </div>
  );
}

function PanelAt({ round, sign, person }: PanelProps & { readonly person: string }) {
  const { measuring } = round.draft[sign];
  switch (measuring.at) {
    case 'ready':
    case 'tapping':
      return <Taking round={round} sign={sign} person={person} measuring={measuring} />;
    case 'running':
      return <RunningPanel round={round} sign={sign} measuring={measuring} />;
    case 'typing':
      return <TypingPanel round={round} sign={sign} measuring={measuring} />;
    case 'void':
      return <VoidPanel round={round} sign={sign} measuring={measuring} />;
    case 'shown':
      return (
        <GoOn part={goOnPages} meanwhile={<ShownAtOnce round={round} sign={sign} entry={measuring.entry} />}>
          {({ ShownPanel }) => (
            <ShownPanel round={round} sign={sign} entry={measuring.entry} person={person} />
          )}
        </GoOn>
      );
  }
}

type TakingProps = PanelProps & {
  readonly person: string;
  readonly measuring: Extract<Measuring, { at: 'ready' | 'tapping' }>;
};

/** Before it starts, and while it is tapped: the place to tap stays the same one from the first tap on. */
function Taking({ round, sign, person, measuring }: TakingProps) {
  const isReady = measuring.at === 'ready';
  const hasValue = round.draft[sign].values.some((value) => !isVoidValue(value));
  const { notDone } = round.draft[sign];
  const [, go] = useLocation();
  const nextStep = useNextStep();
  const notDoneHere =
    isReady && !hasValue ? (
      <NotDoneHere
        key="not-done"
        round={round}
        person={person}
        notDone={notDone}
        reasons={reasonsOf(sign)}
        withReason={(draft, reason) => withNotDone(draft, sign, reason)}
        onGoOn={() => nextStep(round.draft, round, ({ step }) => go(nextHref(person, step)))}
      />
    ) : null;
  // A reason stands in place of the watch, until it is taken back.
  if (notDone !== null && notDoneHere !== null) return <div className="measure">{notDoneHere}</div>;
  return (
    <div className="measure">
      {isReady ? (
        <Ways way={measuring.way} onWay={(way) => round.measure(sign, { ...measuring, way })} />
      ) : null}
      {isReady && measuring.way === 'count' ? (
        <ReadyPanel round={round} sign={sign} measuring={measuring} />
      ) : (
        <GoOn part={tapPages}>
          {({ TappingPanel }) => <TappingPanel round={round} sign={sign} measuring={measuring} />}
        </GoOn>
      )}
      {notDoneHere}
    </div>
  );
}

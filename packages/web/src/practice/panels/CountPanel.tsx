import type { CountOf } from '@evenfall/clinical';
import { type MouseEvent, useEffect, useMemo, useRef } from 'react';
import { useApp } from '../../app/context.js';
import { signText } from '../../app/signText.js';
import { READY } from '../../round/measuring.js';
import type { PanelProps } from '../../round/panelProps.js';
import { ReadyPanel } from '../../round/ReadyPanel.js';
import { RunningPanel } from '../../round/RunningPanel.js';
import { ShownValue } from '../../round/ShownPanel.js';
import { TappingPanel } from '../../round/TappingPanel.js';
import { TypingPanel } from '../../round/TypingPanel.js';
import { useInterruption } from '../../round/useInterruption.js';
import { type Round, revived } from '../../round/useRound.js';
import { Ways } from '../../round/Ways.js';
import { ChestClose } from '../drawing/ChestClose.js';
import { looksOf } from '../drawing/looks.js';
import { WristClose } from '../drawing/WristClose.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import { SoundStrip } from '../SoundStrip.js';
import { StepHeading } from '../StepHeading.js';
import { isAtApex as isPieceAtApex, noiseNow } from '../visit.js';

type CountProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly round: Round;
  readonly sign: CountOf;
  /** The pulse is counted at the heart's apex, and `round` keeps it there. */
  readonly isAtApex?: boolean;
  readonly showsSounds: boolean;
  readonly hearsPulse: boolean;
  readonly onBack: () => void;
};

/** The bedside's own screens of a count and of what came of it, with the pulse under the finger or the chest to be watched above it. */
export function CountPanel({
  engine,
  draft,
  round,
  sign,
  isAtApex = false,
  showsSounds,
  hearsPulse,
  onBack,
}: CountProps) {
  const { words, session } = useApp();
  const { measuring } = round.draft[sign];
  const isStale = 'session' in measuring && measuring.session !== session;
  useInterruption(round, sign);
  useEffect(() => {
    if (isStale) round.keep((was, start) => revived(was, session, start));
  }, [isStale, round, session]);
  const { at } = measuring;
  // What came of it is read from its top, wherever the hand had scrolled to.
  useEffect(() => {
    if (at === 'shown') window.scrollTo(0, 0);
  }, [at]);
  const looks = useMemo(() => looksOf(draft.visit.scenario), [draft.visit.scenario]);
  const pieceAt = draft.isOnChest === true ? 'chest' : isPieceAtApex(draft.visit.actions) ? 'apex' : null;
  const back = useOwnTouch(onBack);
  if (isStale) return null;
  return (
    <div className="practice-count">
      <StepHeading text={isAtApex ? words.sentence('practice.apex') : signText(sign, words)} isUnseen />
      {at === 'shown' ? null : (
        <button type="button" className="button button-quiet" {...back}>
          {words.sentence('practice.backToRoom')}
        </button>
      )}
      {at === 'typing' || at === 'shown' ? null : isAtApex ? (
        <div className="count-apex">
          <ChestClose engine={engine} looks={looks} pieceAt="apex" />
          {showsSounds ? <SoundStrip engine={engine} noiseDbA={noiseNow(draft.visit)} /> : null}
          {showsSounds ? null : <p className="small soft">{words.sentence('practice.apexHint')}</p>}
        </div>
      ) : sign === 'pulse' ? (
        <div className="count-wrist">
          <WristClose engine={engine} looks={looks} isHeard={hearsPulse} />
        </div>
      ) : (
        <ChestClose engine={engine} looks={looks} pieceAt={pieceAt} />
      )}
      <div className="measure-stage">
        <SignPanel round={round} sign={sign} onBack={onBack} />
      </div>
    </div>
  );
}

/**
 * Takes a touch that began on it alone: what is under the finger of a touch that started a count, once the page has become
 * another one, does nothing.
 */
function useOwnTouch(act: () => void) {
  const isOwn = useRef(false);
  return {
    onPointerDown: () => {
      isOwn.current = true;
    },
    onClick: ({ detail }: MouseEvent) => {
      // A press of a key or of an assistive tool comes without a pointer.
      if (isOwn.current || detail === 0) act();
      isOwn.current = false;
    },
  };
}

function SignPanel({ round, sign, onBack }: PanelProps & { readonly onBack: () => void }) {
  const { words } = useApp();
  const { measuring } = round.draft[sign];
  switch (measuring.at) {
    case 'ready':
    case 'tapping':
      return (
        <div className="measure">
          {measuring.at === 'ready' ? (
            <Ways way={measuring.way} onWay={(way) => round.measure(sign, { ...measuring, way })} />
          ) : null}
          {measuring.at === 'ready' && measuring.way === 'count' ? (
            <ReadyPanel round={round} sign={sign} measuring={measuring} />
          ) : (
            <TappingPanel round={round} sign={sign} measuring={measuring} />
          )}
        </div>
      );
    case 'running':
      return <RunningPanel round={round} sign={sign} measuring={measuring} />;
    case 'typing':
      return <TypingPanel round={round} sign={sign} measuring={measuring} />;
    case 'void':
      return (
        <div className="measure" role="status">
          <p className="measure-says">{words.sentence('count.voidTitle')}</p>
          <button
            type="button"
            className="button button-first button-thumb"
            onClick={() => round.measure(sign, READY)}
          >
            {words.sentence('count.again')}
          </button>
        </div>
      );
    case 'shown':
      return (
        <ShownValue
          round={round}
          sign={sign}
          entry={measuring.entry}
          next={(look) => (
            <button type="button" className={look} onClick={onBack}>
              {words.sentence('practice.backToRoom')}
            </button>
          )}
        />
      );
  }
}

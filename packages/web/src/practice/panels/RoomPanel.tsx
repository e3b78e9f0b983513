import { BLADDERS, type Bladder, type Circumstances } from '@evenfall/physiology';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import { ArmScene, type InHand } from '../drawing/ArmScene.js';
import { PersonScene } from '../drawing/PersonScene.js';
import { ARM, arteryY, heldAt, type Laid } from '../drawing/placing.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import type { Change } from '../usePractice.js';
import { CUFF_SCALE } from './cuffScale.js';
import { Hands } from './Hands.js';

type RoomProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly showsSounds: boolean;
  readonly onShowSounds: (shows: boolean) => void;
  readonly isStopped: boolean;
  readonly touch: (kind: 'put-on' | 'taken-off') => void;
  /** What can be done next, below the place. */
  readonly next: ReactNode;
};

const VIEWS = ['person', 'arm', 'hands'] as const;
type View = (typeof VIEWS)[number];
const VIEW_TEXT = { person: 'practice.person', arm: 'practice.arm', hands: 'practice.gauge' } as const;

/** The room as a place: the person, the arm on the table, and what the hands hold. */
export function RoomPanel({ engine, draft, change, next, ...more }: RoomProps) {
  const { words } = useApp();
  const say = words.sentence;
  const [view, setView] = useState<View>(draft.isCuffOn ? 'arm' : 'person');
  const [isFeelingWrist, setFeelingWrist] = useState(false);
  const [inHand, setInHand] = useState<InHand>(draft.piece === null ? 'fingers' : 'chest-piece');
  const [fingers, setFingers] = useState<Laid | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const { circumstances, instrument, scenario, seed } = draft.visit;
  const isFixed = useIsInflated(engine);
  const now = () => performance.now();

  const prepare = (changed: Partial<Circumstances>, bladder?: Bladder) => {
    engine.visit.prepare(changed, bladder === undefined ? {} : { bladder });
    engine.shown();
    change((was) => ({
      ...was,
      visit: engine.visit.data(),
      isCuffOn: bladder === undefined ? was.isCuffOn : true,
    }));
  };
  const lay = (piece: Laid | null) => {
    const held = piece === null ? { offMm: null, held: 'light' as const } : heldAt(piece, arteryY(seed));
    engine.act({ kind: 'chest-piece', ...held }, now());
    if ((piece === null) !== (draft.piece === null)) more.touch(piece === null ? 'taken-off' : 'put-on');
    change((was) => ({ ...was, visit: engine.visit.data(), piece }));
  };
  const feelWrist = () => {
    engine.act({ kind: 'finger', isOn: !isFeelingWrist }, now());
    setFeelingWrist(!isFeelingWrist);
  };
  const laid = inHand === 'fingers' ? fingers : draft.piece;
  return (
    <div className="room" data-view={view}>
      <fieldset className="room-tabs">
        <legend className="unseen">{say('practice.room')}</legend>
        {VIEWS.map((one) => (
          <button
            key={one}
            type="button"
            className={`room-tab room-tab-${one}`}
            aria-pressed={view === one}
            onClick={() => setView(one)}
          >
            {say(VIEW_TEXT[one])}
          </button>
        ))}
      </fieldset>
      <div className="room-scene">
        {view === 'person' ? (
          <>
            <PersonScene
              engine={engine}
              circumstances={circumstances}
              isCuffOn={draft.isCuffOn}
              onPrepare={isFixed ? undefined : (changed) => prepare(changed)}
              onSay={setSaid}
            />
            <p className="small soft" role="status">
              {said ?? say(isFixed ? 'practice.fixedNow' : 'practice.sceneHint')}
            </p>
          </>
        ) : (
          <>
            <ArmScene
              engine={engine}
              seed={seed}
              armCm={scenario.armCm}
              isCuffOn={draft.isCuffOn}
              cuffScale={CUFF_SCALE[instrument.bladder]}
              hasTape={draft.hasMeasuredArm && !draft.isCuffOn}
              inHand={inHand}
              laid={laid}
              onLay={(place) => {
                if (inHand === 'fingers') setFingers({ ...place, isPressed: false });
                else lay({ ...place, isPressed: draft.piece?.isPressed ?? false });
              }}
              laidText={say(inHand === 'fingers' ? 'practice.feelElbow' : pieceText(draft.piece, seed))}
              isFeelingWrist={isFeelingWrist}
              onWrist={feelWrist}
            />
            <div className="room-tools">
              {draft.isCuffOn ? (
                <>
                  <Tool
                    text={say('practice.feelElbow')}
                    isOn={inHand === 'fingers' && fingers !== null}
                    onUse={() => {
                      setInHand('fingers');
                      setFingers(
                        fingers !== null && inHand === 'fingers'
                          ? null
                          : { x: ARM.elbowX + 8, y: 158, isPressed: false },
                      );
                    }}
                  />
                  <Tool
                    text={say(draft.piece === null ? 'practice.pieceOnArm' : 'practice.pieceOff')}
                    isOn={draft.piece !== null}
                    onUse={() => {
                      setInHand('chest-piece');
                      lay(
                        draft.piece !== null
                          ? null
                          : { x: fingers?.x ?? ARM.elbowX + 8, y: fingers?.y ?? 158, isPressed: false },
                      );
                    }}
                  />
                  {draft.piece === null ? null : (
                    <Tool
                      text={say(draft.piece.isPressed ? 'practice.pressLight' : 'practice.pressHard')}
                      isOn={false}
                      onUse={() => {
                        setInHand('chest-piece');
                        if (draft.piece !== null) lay({ ...draft.piece, isPressed: !draft.piece.isPressed });
                      }}
                    />
                  )}
                </>
              ) : (
                <Tool
                  text={say(draft.hasMeasuredArm ? 'practice.tapeAway' : 'practice.tape')}
                  isOn={draft.hasMeasuredArm}
                  onUse={() => change((was) => ({ ...was, hasMeasuredArm: !was.hasMeasuredArm }))}
                />
              )}
              <Tool
                text={say(isFeelingWrist ? 'practice.wristAway' : 'practice.wrist')}
                isOn={isFeelingWrist}
                onUse={feelWrist}
              />
              {draft.isCuffOn && !isFixed ? (
                <Tool
                  text={say('practice.cuffOff')}
                  isOn={false}
                  onUse={() => {
                    if (draft.piece !== null) lay(null);
                    change((was) => ({ ...was, isCuffOn: false }));
                  }}
                />
              ) : null}
            </div>
            {draft.isCuffOn ? (
              <p className="small soft" role="status">
                {say('practice.cuffIsOn', { text: say(`practice.${instrument.bladder}`) })}{' '}
                {say(pieceText(draft.piece, seed))}
              </p>
            ) : (
              <fieldset className="room-cuffs">
                <legend>{say('practice.cuffs')}</legend>
                {BLADDERS.map((bladder) => (
                  <button
                    key={bladder}
                    type="button"
                    className="room-cuff"
                    onClick={() => prepare({}, bladder)}
                  >
                    <svg viewBox="0 0 60 30" aria-hidden="true">
                      <rect
                        className="scene-cuff"
                        x={30 - 22 * CUFF_SCALE[bladder]}
                        y={15 - 10 * CUFF_SCALE[bladder]}
                        width={44 * CUFF_SCALE[bladder]}
                        height={20 * CUFF_SCALE[bladder]}
                        rx="3"
                      />
                    </svg>
                    {say(`practice.${bladder}`)}
                  </button>
                ))}
              </fieldset>
            )}
          </>
        )}
      </div>
      <Hands
        engine={engine}
        draft={draft}
        change={change}
        isFeelingWrist={isFeelingWrist}
        onWrist={feelWrist}
        {...more}
      />
      {next}
    </div>
  );
}

function Tool(props: { readonly text: string; readonly isOn: boolean; readonly onUse: () => void }) {
  return (
    <button type="button" className="room-tool" aria-pressed={props.isOn} onClick={props.onUse}>
      {props.text}
    </button>
  );
}

function pieceText(piece: Laid | null, seed: number) {
  if (piece === null) return 'practice.pieceInHand' as const;
  return heldAt(piece, arteryY(seed)).held === 'under-cuff'
    ? ('practice.pieceUnder' as const)
    : ('practice.pieceOn' as const);
}

/** Whether the cuff was ever up; drawn anew once, when it first is. */
function useIsInflated(engine: RoomEngine): boolean {
  const [isInflated, setInflated] = useState(engine.visit.isInflated);
  const was = useRef(isInflated);
  useEffect(
    () =>
      engine.subscribe(() => {
        if (engine.visit.isInflated === was.current) return;
        was.current = engine.visit.isInflated;
        setInflated(was.current);
      }),
    [engine],
  );
  return isInflated;
}

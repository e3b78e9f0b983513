import { type Arranged, BLADDER_ARMS, BLADDERS, type Bladder, isUnwell } from '@evenfall/physiology';
import { EXERCISE_FIGURES } from '@evenfall/practice';
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import { ArmScene, type InHand } from '../drawing/ArmScene.js';
import { satMinutes } from '../drawing/clockSays.js';
import { looksOf } from '../drawing/looks.js';
import { PersonScene } from '../drawing/PersonScene.js';
import { ARM, arteryY, heldAt, type Laid } from '../drawing/placing.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import type { Touched } from '../touched.js';
import { useIsFlat } from '../useIsFlat.js';
import type { Change } from '../usePractice.js';
import { isAtApex, isFingerOn, nowOf } from '../visit.js';
import { settingOf } from '../whoComesIn.js';
import { AskAndLook } from './AskAndLook.js';
import { CUFF_SCALE } from './cuffScale.js';
import { Hands } from './Hands.js';
import { Tool } from './Tool.js';

type RoomProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly showsSounds: boolean;
  readonly onShowSounds: (shows: boolean) => void;
  readonly isStopped: boolean;
  /** Whether a pulse under the finger is heard, too. */
  readonly hearsPulse: boolean;
  readonly touch: (what: Touched) => void;
  /** When the cuff was highest in the run at hand, seconds of the visit. */
  readonly peakSeconds: () => number | null;
  /** What can be done next, below the place. */
  readonly next: ReactNode;
};

const VIEWS = ['person', 'arm', 'hands'] as const;
type View = (typeof VIEWS)[number];
const VIEW_TEXT = { person: 'practice.person', arm: 'practice.arm', hands: 'practice.gauge' } as const;

const RESTED_MINUTES = 5;
/** Between two inflations they are let sit for so long at a touch, seconds. */
const PASS_SECONDS = 60;

/** The room as a place: the person, the arm on the table, and what the hands hold. */
export function RoomPanel({ engine, draft, change, next, ...more }: RoomProps) {
  const { words } = useApp();
  const say = words.sentence;
  const [view, setView] = useState<View>(draft.isCuffOn ? 'arm' : 'person');
  const [inHand, setInHand] = useState<InHand>(draft.piece === null ? 'fingers' : 'chest-piece');
  const [fingers, setFingers] = useState<Laid | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const { scenario, seed } = draft.visit;
  const looks = useMemo(() => looksOf(scenario), [scenario]);
  const { circumstances, bladder } = useMemo(() => nowOf(draft.visit), [draft.visit]);
  const isFeelingWrist = isFingerOn(draft.visit.actions);
  const isFlat = useIsFlat(engine);
  const now = () => performance.now();
  const isOnChest = draft.isOnChest ?? false;
  const isApex = isAtApex(draft.visit.actions);

  const arrange = (changed: Arranged, cuff: Bladder | null = null) => {
    engine.visit.arrange(changed, cuff, engine.secondsAt(now()));
    engine.shown();
    change((was) => ({ ...was, visit: engine.visit.data(), isCuffOn: cuff === null ? was.isCuffOn : true }));
  };
  /** Going to another room takes its time of the visit, and they sit down there. */
  const putRight = (changed: Arranged) => {
    if (changed.isSeatedAnew === true) engine.skip(EXERCISE_FIGURES.sideRoomSeconds.value);
    arrange({
      ...changed,
      ...(isUp && changed.isSeatedAnew === true ? { posture: 'sitting' as const } : {}),
    });
  };
  const rest = () => {
    const lackMinutes = RESTED_MINUTES - satMinutes(circumstances.restMinutes, engine.visit.seconds);
    const asFound = draft.visit.circumstances.restMinutes;
    const isAsFound = !engine.visit.isInflated && circumstances.restMinutes === asFound;
    if (isAsFound && asFound < RESTED_MINUTES) {
      engine.visit.prepare({ restMinutes: RESTED_MINUTES, observerMinutes: RESTED_MINUTES });
      engine.shown();
    } else engine.skip(lackMinutes > 0 ? lackMinutes * 60 : PASS_SECONDS);
    change((was) => ({ ...was, visit: engine.visit.data() }));
  };
  const lay = (piece: Laid | null) => {
    const held = piece === null ? { offMm: null, held: 'light' as const } : heldAt(piece, arteryY(seed));
    engine.act({ kind: 'chest-piece', ...held }, now());
    more.touch(piece === null ? 'taken-off' : draft.piece === null ? 'put-on' : 'moved');
    change((was) => ({
      ...was,
      visit: engine.visit.data(),
      piece,
      isOnChest: piece === null ? (was.isOnChest ?? false) : false,
    }));
  };
  const listenAtChest = () => {
    if (!isOnChest && (draft.piece !== null || isApex))
      engine.act({ kind: 'chest-piece', offMm: null, held: 'light' }, now());
    more.touch(isOnChest ? 'taken-off' : 'put-on');
    change((was) => ({ ...was, visit: engine.visit.data(), piece: null, isOnChest: !isOnChest }));
  };
  const listenAtApex = () => {
    more.touch(isApex ? 'taken-off' : 'put-on');
    engine.act({ kind: 'apex', isOn: !isApex }, now());
    change((was) => ({ ...was, visit: engine.visit.data(), piece: null, isOnChest: false }));
  };
  const feelWrist = () => {
    engine.act({ kind: 'finger', isOn: !isFeelingWrist }, now());
    change((was) => ({ ...was, visit: engine.visit.data() }));
  };
  const scene = useRef<HTMLDivElement>(null);
  const wasCuffOn = useRef(draft.isCuffOn);
  useEffect(() => {
    if (wasCuffOn.current === draft.isCuffOn) return;
    wasCuffOn.current = draft.isCuffOn;
    // The button that was pressed is gone: the keyboard goes on at what is done next, and is not sent to the head of the page.
    if (document.activeElement !== document.body && document.activeElement !== null) return;
    const next = draft.isCuffOn ? '.room-tools .room-tool' : '.room-cuffs .room-cuff';
    scene.current?.querySelector<HTMLElement>(next)?.focus({ preventScroll: true });
  }, [draft.isCuffOn]);
  const laid = inHand === 'fingers' ? fingers : draft.piece;
  const isUp = circumstances.posture === 'standing';
  const isLeft = circumstances.arm === 'left';
  const askAndLook = (of: 'person' | 'arm') => (
    <AskAndLook
      view={of}
      circumstances={circumstances}
      place={scenario}
      isCuffOn={draft.isCuffOn}
      onArrange={isFlat && !engine.isAtEnd ? putRight : undefined}
    />
  );
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
      <div className="room-scene" ref={scene}>
        {view === 'person' ? (
          <>
            <PersonScene
              engine={engine}
              circumstances={circumstances}
              looks={looks}
              isInBed={isUnwell(scenario)}
              isInBay={settingOf(scenario) === 'emergency'}
              isCuffOn={draft.isCuffOn}
              isOnChest={isOnChest}
              isAtApex={isApex}
              onApex={listenAtApex}
              clock={engine.isAtEnd ? 'at-end' : isFlat ? 'rest' : 'cuff-is-up'}
              onArrange={isFlat && !engine.isAtEnd ? arrange : undefined}
              onRest={rest}
              onSay={setSaid}
            />
            <p className="small soft" role="status">
              {isApex
                ? say('practice.pieceAtApex')
                : (said ??
                  say(
                    engine.isAtEnd
                      ? 'practice.noMoreTime'
                      : isFlat
                        ? 'practice.sceneHint'
                        : 'practice.fixedNow',
                  ))}
            </p>
            {circumstances.isQuieter ? <p className="small">{say('practice.inSideRoom')}</p> : null}
            <div className="room-tools">
              <Tool
                text={[say('practice.listenChest'), say('practice.chestAway')]}
                isOn={isOnChest}
                onUse={listenAtChest}
              />
              <Tool
                text={[say('practice.listenApex'), say('practice.apexAway')]}
                isOn={isApex}
                onUse={listenAtApex}
              />
              {scenario.standing === null || engine.isAtEnd ? null : (
                <Tool
                  text={[say('practice.standUp'), say('practice.sitDown')]}
                  isOn={isUp}
                  isHeld={!isFlat}
                  onUse={() => arrange({ posture: isUp ? 'sitting' : 'standing' })}
                />
              )}
            </div>
            {askAndLook('person')}
          </>
        ) : (
          <>
            <ArmScene
              engine={engine}
              seed={seed}
              looks={looks}
              armCm={scenario.armCm}
              isLeft={isLeft}
              isCuffOn={draft.isCuffOn}
              cuffScale={CUFF_SCALE[bladder]}
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
                    text={[say('practice.pieceOnArm'), say('practice.pieceOff')]}
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
                  <Tool
                    text={[say('practice.pressHard'), say('practice.pressLight')]}
                    isOn={draft.piece?.isPressed === true}
                    isHeld={draft.piece === null}
                    onUse={() => {
                      setInHand('chest-piece');
                      if (draft.piece !== null) lay({ ...draft.piece, isPressed: !draft.piece.isPressed });
                    }}
                  />
                </>
              ) : (
                <>
                  <Tool
                    text={[say('practice.tape'), say('practice.tapeAway')]}
                    isOn={draft.hasMeasuredArm}
                    onUse={() => change((was) => ({ ...was, hasMeasuredArm: !was.hasMeasuredArm }))}
                  />
                  {isFlat ? (
                    <Tool
                      text={say(isLeft ? 'showing.toRight' : 'showing.toLeft')}
                      isOn={false}
                      onUse={() => {
                        setFingers(null);
                        arrange({ arm: isLeft ? 'right' : 'left' });
                      }}
                    />
                  ) : null}
                </>
              )}
              <Tool
                text={[say('practice.wrist'), say('practice.wristAway')]}
                isOn={isFeelingWrist}
                onUse={feelWrist}
              />
              {draft.isCuffOn ? (
                <>
                  <Tool
                    text={say('practice.raiseArm')}
                    isOn={circumstances.wasArmRaised}
                    isHeld={!isFlat}
                    onUse={() => arrange({ wasArmRaised: !circumstances.wasArmRaised })}
                  />
                  <Tool
                    text={say('practice.cuffOff')}
                    isOn={false}
                    isHeld={!isFlat}
                    onUse={() => {
                      if (draft.piece !== null) lay(null);
                      change((was) => ({ ...was, isCuffOn: false }));
                    }}
                  />
                </>
              ) : null}
            </div>
            {askAndLook('arm')}
            <p className="small soft">{say(isLeft ? 'showing.left' : 'showing.right')}</p>
            {draft.isCuffOn ? (
              <p className="small soft room-arm-says" role="status">
                {say('practice.cuffIsOn', { text: say(`practice.${bladder}`) })}{' '}
                {say(isApex ? 'practice.pieceAtApex' : pieceText(draft.piece, seed))}
                {circumstances.wasArmRaised ? ` ${say('practice.armIsRaised')}` : null}
              </p>
            ) : (
              <fieldset className="room-cuffs">
                <legend>{say('practice.cuffs')}</legend>
                {BLADDERS.map((one) => (
                  <button key={one} type="button" className="room-cuff" onClick={() => arrange({}, one)}>
                    <CuffDrawn bladder={one} />
                    {say(`practice.${one}`)}{' '}
                    <span className="soft">
                      {say('practice.cuffRange', { least: BLADDER_ARMS[one][0], most: BLADDER_ARMS[one][1] })}
                    </span>
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
        looks={looks}
        isFeelingWrist={isFeelingWrist}
        onWrist={feelWrist}
        {...more}
      />
      {next}
    </div>
  );
}

/** A cuff laid flat, as large as it is beside the others. */
function CuffDrawn({ bladder }: { readonly bladder: Bladder }) {
  const scale = CUFF_SCALE[bladder];
  return (
    <svg viewBox="0 0 60 30" aria-hidden="true">
      <rect
        className="scene-cuff"
        x={30 - 22 * scale}
        y={15 - 10 * scale}
        width={44 * scale}
        height={20 * scale}
        rx="3"
      />
      <path className="scene-cuff-line" d={`M${30 + 8 * scale} ${15 - 10 * scale} v${20 * scale}`} />
      <path
        className="hose hose-thin"
        d={`M${30 - 6 * scale} ${15 + 10 * scale} v4 M30 ${15 + 10 * scale} v4`}
      />
    </svg>
  );
}

function pieceText(piece: Laid | null, seed: number) {
  if (piece === null) return 'practice.pieceInHand' as const;
  return heldAt(piece, arteryY(seed)).held === 'under-cuff'
    ? ('practice.pieceUnder' as const)
    : ('practice.pieceOn' as const);
}

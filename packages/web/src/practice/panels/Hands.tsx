import { inflateTo } from '@evenfall/clinical';
import { strokeOf } from '@evenfall/physiology';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { useRef, useState } from 'react';
import { useApp, useKept } from '../../app/context.js';
import { knownAt } from '../../pressure/pressureDraft.js';
import { TouchArea } from '../../pressure/TouchArea.js';
import { PEDAL_KEYS } from '../../pressure/useTouches.js';
import { Bulb } from '../Bulb.js';
import type { Looks } from '../drawing/looks.js';
import { WristClose } from '../drawing/WristClose.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import { LiveGauge } from '../LiveGauge.js';
import { withTouch } from '../markedRun.js';
import { placeOf } from '../placeOf.js';
import { SoundStrip } from '../SoundStrip.js';
import type { Touched } from '../touched.js';
import { useIsFlat } from '../useIsFlat.js';
import { useKeys } from '../useKeys.js';
import type { Change } from '../usePractice.js';
import { Valve } from '../Valve.js';
import { pressed, SHIFT_DEGREES, STEP_DEGREES, WIDE_DEGREES } from '../valveTurn.js';
import { noiseNow, nowOf } from '../visit.js';

type HandsProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly showsSounds: boolean;
  readonly onShowSounds: (shows: boolean) => void;
  readonly looks: Looks;
  readonly isFeelingWrist: boolean;
  readonly hearsPulse: boolean;
  readonly onWrist: () => void;
  readonly isStopped: boolean;
  readonly touch: (what: Touched) => void;
  readonly peakSeconds: () => number | null;
};

/** Gauge, bulb and valve, and what is marked while the cuff is let down. */
export function Hands(props: HandsProps) {
  const { engine, draft, change, showsSounds, isFeelingWrist, onWrist, isStopped, touch, looks } = props;
  const { words } = useApp();
  const say = words.sentence;
  const [degrees, setDegrees] = useState(() => engine.visit.snapshot().valveDegrees);
  const valve = useRef(degrees);
  const can = draft.isCuffOn && !isStopped;
  const { marks } = draft;
  const isByFeel = isFeelingWrist && draft.piece === null;
  // On the way up only a pulse under the finger is touched.
  const heard = marks.filter((at) => at > (props.peakSeconds() ?? 0));
  const { inflation } = (useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN).runRules;
  const place = placeOf(draft.visit);
  const target = inflateTo(knownAt({ ...draft.round.pressure, place }, place), inflation).mmHg;
  const squeeze = (effort: number, atMs: number) => {
    if (!can) return;
    // To let all air out the screw stands wide open: a hand that pumps again shuts it first.
    if (valve.current >= WIDE_DEGREES) turn(0, atMs);
    const { circumstances, bladder } = nowOf(engine.visit.data());
    const { cuffMmHg } = engine.visit.snapshot();
    engine.act(
      { kind: 'squeeze', share: strokeOf(bladder, circumstances.isCuffLoose, cuffMmHg, effort) },
      atMs,
    );
    touch('bulb');
  };
  const turn = (to: number, atMs: number) => {
    if (isStopped) return;
    valve.current = to;
    setDegrees(to);
    engine.act({ kind: 'valve', degrees: to }, atMs);
  };
  const release = (atMs: number) => {
    if (!can) return;
    engine.act({ kind: 'quick-release' }, atMs);
    valve.current = WIDE_DEGREES;
    setDegrees(WIDE_DEGREES);
  };
  const isFlat = useIsFlat(engine);
  const { hasOtherGauge } = nowOf(draft.visit);
  const takeGauge = () => {
    engine.visit.takeGauge(engine.secondsAt(performance.now()));
    change((was) => ({ ...was, visit: engine.visit.data() }));
  };
  const mark = (atMs: number) => {
    if (!can) return;
    const at = engine.secondsAt(atMs);
    change((was) => ({ ...was, marks: withTouch(was.marks, at) }));
  };
  useKeys((key, event) => {
    const { timeStamp, shiftKey, repeat } = event;
    const step = shiftKey ? SHIFT_DEGREES : STEP_DEGREES;
    if (key === ' ' && !repeat) squeeze(shiftKey ? 0.5 : 1, timeStamp);
    else if (key === ' ') return true;
    else if (key === 'ArrowRight') turn(pressed(valve.current, step), timeStamp);
    else if (key === 'ArrowLeft') turn(pressed(valve.current, -step), timeStamp);
    else if (key === 'Home') turn(0, timeStamp);
    else if (repeat) return PEDAL_KEYS.includes(key);
    else if (PEDAL_KEYS.includes(key)) mark(timeStamp);
    else if (key === 'r' || key === 'R') release(timeStamp);
    else if (key === 'm' || key === 'M') mark(timeStamp);
    else if (key === 'f' || key === 'F') onWrist();
    else return false;
    return true;
  });
  return (
    <div className="room-hands">
      <div className="room-gauge">
        <LiveGauge engine={engine} />
        {isFeelingWrist ? <WristClose engine={engine} looks={looks} isHeard={props.hearsPulse} /> : null}
      </div>
      {/* Both have one place, kept while the cuff is up: bulb and buttons stay under the hand. */}
      <div className="room-other-gauge">
        {hasOtherGauge ? null : (
          <button
            type="button"
            className="button button-quiet"
            data-away={!isFlat || isStopped}
            onClick={takeGauge}
          >
            {say('practice.otherGauge')}
          </button>
        )}
        <p className="small soft" role="status" hidden={!hasOtherGauge}>
          {say('practice.otherGaugeIsOn')}
        </p>
      </div>
      <p className="room-bare small" role="status" hidden={draft.isCuffOn}>
        {say('practice.noCuff')}
      </p>
      {showsSounds ? <SoundStrip engine={engine} noiseDbA={noiseNow(draft.visit)} isBare /> : null}
      <div className="room-grip" data-can={can}>
        <Bulb onSqueeze={squeeze} />
        <Valve degrees={degrees} onTurn={turn} />
      </div>
      {target === null ? null : (
        <p className="room-target">
          <strong>{say('pressure.pumpTo', { mmHg: target })}</strong>
        </p>
      )}
      <TouchArea
        count={isByFeel ? marks.length : heard.length}
        touch={mark}
        valve={null}
        how={say('practice.markHow')}
        takesFinger
        {...(isByFeel ? { says: say('practice.markFelt') } : {})}
      />
      <p className="unseen" role="status">
        {say('moments.soFar', { touches: marks.length })}
      </p>
      <div className="room-buttons">
        <button
          type="button"
          className="button"
          aria-disabled={!can}
          onClick={(event) => release(event.timeStamp)}
        >
          {say('practice.release')}
        </button>
        <button
          type="button"
          className="button"
          aria-disabled={marks.length === 0}
          onClick={() => change((was) => ({ ...was, marks: was.marks.slice(0, -1) }))}
        >
          {say('moments.undo')}
        </button>
      </div>
      <p className="small soft">{say('practice.valveHint')}</p>
      <p className="small soft room-keys-are">{say('practice.keysAre')}</p>
      <label className="tick small">
        <input
          type="checkbox"
          checked={showsSounds}
          onChange={(event) => props.onShowSounds(event.target.checked)}
        />
        <span>{say('practice.showSounds')}</span>
      </label>
      {showsSounds ? <p className="small soft">{say('practice.soundsLegend')}</p> : null}
    </div>
  );
}

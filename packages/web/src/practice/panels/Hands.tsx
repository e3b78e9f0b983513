import { strokeOf } from '@evenfall/physiology';
import { useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import { Bulb } from '../Bulb.js';
import type { Looks } from '../drawing/looks.js';
import { WristClose } from '../drawing/WristClose.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import { LiveGauge } from '../LiveGauge.js';
import { SoundStrip } from '../SoundStrip.js';
import type { Touched } from '../touched.js';
import { useKeys } from '../useKeys.js';
import type { Change } from '../usePractice.js';
import { Valve } from '../Valve.js';
import { SHIFT_DEGREES, STEP_DEGREES, turned, WIDE_DEGREES } from '../valveTurn.js';
import { nowOf } from '../visit.js';

type HandsProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly showsSounds: boolean;
  readonly onShowSounds: (shows: boolean) => void;
  readonly looks: Looks;
  readonly isFeelingWrist: boolean;
  readonly onWrist: () => void;
  readonly isStopped: boolean;
  readonly touch: (what: Touched) => void;
};

/** Gauge, bulb and valve, and what is marked while the cuff is let down. */
export function Hands(props: HandsProps) {
  const { engine, draft, change, showsSounds, isFeelingWrist, onWrist, isStopped, touch, looks } = props;
  const { words } = useApp();
  const say = words.sentence;
  const [degrees, setDegrees] = useState(() => engine.visit.snapshot().valveDegrees);
  const valve = useRef(degrees);
  const can = draft.isCuffOn && !isStopped;
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
  const mark = (atMs: number) => {
    if (!can) return;
    const at = engine.secondsAt(atMs);
    change((was) => ({ ...was, marks: [...was.marks, at] }));
  };
  useKeys((key, event) => {
    const { timeStamp, shiftKey, repeat } = event;
    const step = shiftKey ? SHIFT_DEGREES : STEP_DEGREES;
    if (key === ' ' && !repeat) squeeze(shiftKey ? 0.5 : 1, timeStamp);
    else if (key === ' ') return true;
    else if (key === 'ArrowRight') turn(turned(valve.current, step), timeStamp);
    else if (key === 'ArrowLeft') turn(turned(valve.current, -step), timeStamp);
    else if (key === 'Home') turn(0, timeStamp);
    else if (repeat) return false;
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
        {isFeelingWrist ? <WristClose engine={engine} looks={looks} /> : null}
      </div>
      <p className="room-bare small" role="status" hidden={draft.isCuffOn}>
        {say('practice.noCuff')}
      </p>
      {showsSounds ? <SoundStrip engine={engine} noiseDbA={draft.visit.scenario.noiseDbA} isBare /> : null}
      <div className="room-grip" data-can={can}>
        <Bulb onSqueeze={squeeze} />
        <Valve degrees={degrees} onTurn={turn} />
      </div>
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
          aria-disabled={!can}
          onPointerDown={(event) => mark(event.timeStamp)}
          onClick={(event) => {
            if (event.detail === 0) mark(event.timeStamp);
          }}
        >
          {say('practice.mark')}
        </button>
      </div>
      <p className="small soft">{say('practice.valveHint')}</p>
      <div className="small room-marks">
        <span role="status">
          {draft.marks.length === 0 ? (
            <span className="soft">{say('practice.markHint')}</span>
          ) : (
            say('practice.marked', { marks: draft.marks.length })
          )}
        </span>
        {draft.marks.length === 0 ? null : (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => change((was) => ({ ...was, marks: [] }))}
          >
            {say('practice.unmark')}
          </button>
        )}
      </div>
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

import { useEffect, useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import { Bulb, ORDINARY_SHARE } from '../Bulb.js';
import type { RoomEngine } from '../engine.js';
import type { PracticeDraft } from '../keptPractice.js';
import { LiveGauge } from '../LiveGauge.js';
import { SoundStrip } from '../SoundStrip.js';
import { useKeys } from '../useKeys.js';
import type { Change } from '../usePractice.js';
import { ARROW_DEGREES, SHIFT_DEGREES, turned, Valve } from '../Valve.js';

type HandsProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly showsSounds: boolean;
  readonly onShowSounds: (shows: boolean) => void;
  readonly isFeelingWrist: boolean;
  readonly onWrist: () => void;
  readonly isStopped: boolean;
};

/** Gauge, bulb and valve, and what is marked while the cuff is let down. */
export function Hands(props: HandsProps) {
  const { engine, draft, change, showsSounds, isFeelingWrist, onWrist, isStopped } = props;
  const { words } = useApp();
  const say = words.sentence;
  const [degrees, setDegrees] = useState(() => engine.visit.snapshot().valveDegrees);
  const valve = useRef(degrees);
  const can = draft.isCuffOn && !isStopped;
  const squeeze = (share: number, atMs: number) => {
    if (can) engine.act({ kind: 'squeeze', share }, atMs);
  };
  const turn = (to: number, atMs: number) => {
    if (isStopped) return;
    valve.current = to;
    setDegrees(to);
    engine.act({ kind: 'valve', degrees: to }, atMs);
  };
  const release = (atMs: number) => {
    if (can) engine.act({ kind: 'quick-release' }, atMs);
  };
  const mark = (atMs: number) => {
    if (!can) return;
    const at = engine.secondsAt(atMs);
    change((was) => ({ ...was, marks: [...was.marks, at] }));
  };
  useKeys((key, event) => {
    const { timeStamp, shiftKey, repeat } = event;
    const step = shiftKey ? SHIFT_DEGREES : ARROW_DEGREES;
    if (key === ' ' && !repeat) squeeze(shiftKey ? ORDINARY_SHARE / 2 : ORDINARY_SHARE, timeStamp);
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
        {isFeelingWrist ? <UnderFinger engine={engine} /> : null}
      </div>
      {draft.isCuffOn ? null : (
        <p className="room-bare" role="status">
          {say('practice.noCuff')}
        </p>
      )}
      {showsSounds ? <SoundStrip engine={engine} noiseDbA={draft.visit.scenario.noiseDbA} /> : null}
      <div className="room-grip" data-can={can}>
        <Bulb onSqueeze={squeeze} />
        <div className="room-screw">
          <Valve degrees={degrees} onTurn={turn} />
          <span className="small soft">
            {say('practice.valve')}:{' '}
            {degrees < 1
              ? say('practice.valveShut')
              : say('practice.valveAt', { degrees: Math.round(degrees) })}
          </span>
        </div>
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
      {draft.marks.length === 0 ? null : (
        <p className="small room-marks" role="status">
          {say('practice.marked', { marks: draft.marks.length })}{' '}
          <button
            type="button"
            className="button button-quiet"
            onClick={() => change((was) => ({ ...was, marks: [] }))}
          >
            {say('practice.unmark')}
          </button>
        </p>
      )}
      <label className="tick small">
        <input
          type="checkbox"
          checked={showsSounds}
          onChange={(event) => props.onShowSounds(event.target.checked)}
        />
        <span>{say('practice.showSounds')}</span>
      </label>
    </div>
  );
}

/** The pulse under a finger that stays at the wrist while the eyes are on the gauge: a soft ring, a short push. */
export function UnderFinger({ engine }: { readonly engine: RoomEngine }) {
  const { words } = useApp();
  const ring = useRef<SVGCircleElement>(null);
  useEffect(
    () =>
      engine.subscribe(({ now, felt }) => {
        const swell = Math.max(0, Math.min(1.2, now.wrist));
        ring.current?.setAttribute('r', (10 + 14 * swell).toFixed(2));
        ring.current?.setAttribute('opacity', (0.2 + 0.66 * swell).toFixed(2));
        if (felt.some(({ isFelt }) => isFelt)) push();
      }),
    [engine],
  );
  return (
    <svg
      className="under-finger"
      viewBox="0 0 60 60"
      role="img"
      aria-label={words.sentence('practice.feltNow')}
    >
      <circle className="under-finger-pad" cx="30" cy="30" r="28" />
      <circle ref={ring} className="felt-ring" cx="30" cy="30" r="10" />
    </svg>
  );
}

/** How long a pulse is felt on a device that can push back, ms. */
const PUSH_MS = 35;

function push(): void {
  try {
    navigator.vibrate?.(PUSH_MS);
  } catch {
    // A device that cannot says so in its own way.
  }
}

import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import {
  arcTo,
  between,
  handOf,
  pressed,
  SHIFT_DEGREES,
  STEP_DEGREES,
  turned,
  WIDE_DEGREES,
  WIDEST_TURN,
} from './valveTurn.js';

/** So near its middle a finger has no direction, px. */
const MIDDLE_PX = 8;

type ValveProps = {
  readonly degrees: number;
  readonly onTurn: (degrees: number, atMs: number) => void;
};

/**
 * The screw beside the bulb, seen from its end: turned by dragging round it, with the wheel, with the arrow keys, or by the
 * buttons under it, for a hand that cannot drag. Source: WCAG 2.2, 2.5.7 (dragging movements).
 */
export function Valve({ degrees, onTurn }: ValveProps) {
  const { words } = useApp();
  const say = words.sentence;
  const screw = useRef<HTMLDivElement>(null);
  const hand = useRef<number | null>(null);
  const now = useRef({ degrees, onTurn });
  now.current = { degrees, onTurn };
  const by = (step: number, atMs: number) => {
    const next = turned(now.current.degrees, step);
    if (next !== now.current.degrees) now.current.onTurn(next, atMs);
  };
  const press = (step: number, atMs: number) => {
    const next = pressed(now.current.degrees, step);
    if (next !== now.current.degrees) now.current.onTurn(next, atMs);
  };
  const turn = useRef(by);
  turn.current = by;
  useEffect(() => {
    // By hand, for the page must not scroll under it.
    const face = screw.current;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      turn.current(event.deltaY > 0 ? STEP_DEGREES : -STEP_DEGREES, event.timeStamp);
    };
    face?.addEventListener('wheel', onWheel, { passive: false });
    return () => face?.removeEventListener('wheel', onWheel);
  }, []);
  /** Where the hand is about the middle, degrees; null so near it that it has no direction. */
  const angleOf = ({ clientX, clientY }: PointerEvent): number | null => {
    const box = screw.current?.getBoundingClientRect();
    if (box === undefined) return null;
    const [x, y] = [clientX - box.left - box.width / 2, clientY - box.top - box.height / 2];
    return Math.hypot(x, y) < MIDDLE_PX ? null : (Math.atan2(y, x) * 180) / Math.PI;
  };
  const onKey = (event: KeyboardEvent) => {
    const step = event.shiftKey ? SHIFT_DEGREES : STEP_DEGREES;
    const { timeStamp } = event.nativeEvent;
    if (event.key === 'ArrowRight' || event.key === 'ArrowUp') press(step, timeStamp);
    else if (event.key === 'ArrowLeft' || event.key === 'ArrowDown') press(-step, timeStamp);
    else if (event.key === 'Home') onTurn(0, timeStamp);
    else if (event.key === 'End') onTurn(WIDE_DEGREES, timeStamp);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const opened = handOf(degrees);
  const shown = Math.round(opened);
  return (
    <div className="room-screw">
      <div
        ref={screw}
        className="valve"
        role="slider"
        tabIndex={0}
        aria-label={say('practice.valve')}
        aria-valuemin={0}
        aria-valuemax={WIDEST_TURN}
        aria-valuenow={shown}
        aria-valuetext={shown === 0 ? say('practice.valveShut') : say('practice.valveAt', { degrees: shown })}
        onKeyDown={onKey}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          hand.current = angleOf(event);
        }}
        onPointerMove={(event) => {
          if ((event.buttons & 1) === 0) return;
          const angle = angleOf(event);
          if (angle === null) return;
          const moved = hand.current === null ? 0 : between(hand.current, angle);
          // A finger is never quite still: less than a degree waits for the rest of it.
          if (hand.current !== null && Math.abs(moved) < 1) return;
          hand.current = angle;
          by(moved, event.timeStamp);
        }}
        onPointerUp={() => {
          hand.current = null;
        }}
        onPointerCancel={() => {
          hand.current = null;
        }}
      >
        <svg viewBox="0 0 120 120" aria-hidden="true">
          <path className="valve-arc" d={arcTo(WIDEST_TURN, 50)} />
          <path className="valve-way" d="M103.200 64.600 L116 66.200 L107.200 77.500 Z" />
          {opened > 0 ? <path className="valve-open" d={arcTo(opened, 50)} /> : null}
          <circle className="valve-end" cx="60" cy="10" r="3.500" />
          <g transform={`rotate(${opened} 60 60)`}>
            <circle className="valve-screw" cx="60" cy="60" r="38" />
            {Array.from({ length: 18 }, (_, at) => (
              <line
                // biome-ignore lint/suspicious/noArrayIndexKey: notches of a screw have no name but their place
                key={at}
                className="valve-notch"
                x1="60"
                y1="22"
                x2="60"
                y2="28"
                transform={`rotate(${at * 20} 60 60)`}
              />
            ))}
            <path className="valve-mark" d="M60 20 L66 42 L54 42 Z" />
          </g>
        </svg>
      </div>
      <span className="small soft room-screw-says">
        {say('practice.valve')}:{' '}
        {shown === 0
          ? say('practice.valveShut')
          : degrees >= WIDE_DEGREES
            ? say('practice.valveWide')
            : say('practice.valveOpen', { degrees: shown })}
      </span>
      <div className="valve-steps">
        <button
          type="button"
          className="valve-step"
          aria-label={say('practice.valveLess')}
          onClick={(event) => press(-STEP_DEGREES, event.timeStamp)}
        >
          −
        </button>
        <button
          type="button"
          className="valve-step"
          aria-label={say('practice.valveMore')}
          onClick={(event) => press(STEP_DEGREES, event.timeStamp)}
        >
          +
        </button>
      </div>
    </div>
  );
}

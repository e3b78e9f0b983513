import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';

/** From shut to wide open, degrees of the screw. */
export const WIDE_DEGREES = 120;
const WHEEL_DEGREES = 3;
/** One press of an arrow key, and of one with Shift. A turn under three degrees does not move the screw. */
export const ARROW_DEGREES = 3;
export const SHIFT_DEGREES = 12;

type ValveProps = {
  readonly degrees: number;
  readonly onTurn: (degrees: number, atMs: number) => void;
};

export function turned(degrees: number, by: number): number {
  return Math.max(0, Math.min(WIDE_DEGREES, degrees + by));
}

/** The screw beside the bulb, seen from its end: turned by dragging round it, with the wheel, or with the arrow keys. */
export function Valve({ degrees, onTurn }: ValveProps) {
  const { words } = useApp();
  const screw = useRef<HTMLDivElement>(null);
  const hand = useRef<number | null>(null);
  const now = useRef({ degrees, onTurn });
  now.current = { degrees, onTurn };
  const by = (step: number, atMs: number) => {
    const next = turned(now.current.degrees, step);
    if (next !== now.current.degrees) now.current.onTurn(next, atMs);
  };
  const turn = useRef(by);
  turn.current = by;
  useEffect(() => {
    // By hand, for the page must not scroll under it.
    const face = screw.current;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      turn.current(event.deltaY > 0 ? WHEEL_DEGREES : -WHEEL_DEGREES, event.timeStamp);
    };
    face?.addEventListener('wheel', onWheel, { passive: false });
    return () => face?.removeEventListener('wheel', onWheel);
  }, []);
  const angleOf = ({ clientX, clientY }: PointerEvent) => {
    const box = screw.current?.getBoundingClientRect();
    if (box === undefined) return 0;
    return (
      (Math.atan2(clientY - box.top - box.height / 2, clientX - box.left - box.width / 2) * 180) / Math.PI
    );
  };
  const onKey = (event: KeyboardEvent) => {
    const step = event.shiftKey ? SHIFT_DEGREES : ARROW_DEGREES;
    const { timeStamp } = event.nativeEvent;
    if (event.key === 'ArrowRight' || event.key === 'ArrowUp') by(step, timeStamp);
    else if (event.key === 'ArrowLeft' || event.key === 'ArrowDown') by(-step, timeStamp);
    else if (event.key === 'Home') onTurn(0, timeStamp);
    else if (event.key === 'End') onTurn(WIDE_DEGREES, timeStamp);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const shown = Math.round(degrees);
  return (
    <div
      ref={screw}
      className="valve"
      role="slider"
      tabIndex={0}
      aria-label={words.sentence('practice.valve')}
      aria-valuemin={0}
      aria-valuemax={WIDE_DEGREES}
      aria-valuenow={shown}
      aria-valuetext={
        shown === 0
          ? words.sentence('practice.valveShut')
          : words.sentence('practice.valveAt', { degrees: shown })
      }
      onKeyDown={onKey}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        hand.current = angleOf(event);
      }}
      onPointerMove={(event) => {
        if (hand.current === null || (event.buttons & 1) === 0) return;
        const angle = angleOf(event);
        // The shorter way round.
        const moved = ((angle - hand.current + 540) % 360) - 180;
        hand.current = angle;
        by(moved, event.timeStamp);
      }}
      onPointerUp={() => {
        hand.current = null;
      }}
    >
      <svg viewBox="0 0 120 120" aria-hidden="true">
        <path className="valve-arc" d="M60 10 A50 50 0 0 1 103.300 85" />
        <circle className="valve-end" cx="60" cy="10" r="3.500" />
        <g transform={`rotate(${degrees} 60 60)`}>
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
  );
}

import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { handDegrees, tickEnds } from './dialGeometry.js';

type DialProps = {
  /** Monotonic time of the start; null while it stands at the top. */
  readonly startedAtMs: number | null;
  /** The end of the window is marked on the face; null for no window. */
  readonly windowSeconds: number | null;
};

const TICKS = Array.from({ length: 60 }, (_, second) => second);
const NUMERALS = [15, 30, 45, 60];

/** A watch face of our own with a sweep second hand. With reduced motion the hand steps once a second. */
export function Dial({ startedAtMs, windowSeconds }: DialProps) {
  const { clock, words } = useApp();
  const hand = useRef<SVGGElement>(null);

  useEffect(() => {
    const steps = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    let frame = 0;
    const draw = () => {
      const seconds = startedAtMs === null ? 0 : (clock.monotonicMs() - startedAtMs) / 1000;
      hand.current?.setAttribute('transform', `rotate(${handDegrees(seconds, steps)} 100 100)`);
      if (startedAtMs !== null) frame = requestAnimationFrame(draw);
    };
    draw();
    return () => cancelAnimationFrame(frame);
  }, [startedAtMs, clock]);

  return (
    <svg className="dial" viewBox="0 0 200 200" role="img" aria-label={words.sentence('count.watch')}>
      <circle className="dial-face" cx="100" cy="100" r="96" />
      {TICKS.map((second) => {
        const { x1, y1, x2, y2 } = tickEnds(second, second % 5 === 0 ? 82 : 88, 92);
        return (
          <line
            key={second}
            className={second % 5 === 0 ? 'dial-tick dial-tick-five' : 'dial-tick'}
            x1={x1}
            y1={y1}
            x2={x2}
            y2={y2}
          />
        );
      })}
      {NUMERALS.map((second) => {
        const { x1, y1 } = tickEnds(second, 69, 69);
        return (
          <text
            key={second}
            className="dial-numeral"
            x={x1}
            y={y1}
            dominantBaseline="central"
            textAnchor="middle"
          >
            {second}
          </text>
        );
      })}
      {windowSeconds === null ? null : (
        <path
          className="dial-end"
          d="M100 2 L106 -8 L94 -8 Z"
          transform={`rotate(${handDegrees(windowSeconds, false)} 100 100) translate(0 8)`}
        />
      )}
      <g ref={hand}>
        <path className="dial-hand" d="M99 122 L101 122 L100.700 14 L99.300 14 Z" />
        <circle className="dial-weight" cx="100" cy="124" r="5" />
      </g>
      <circle className="dial-hub" cx="100" cy="100" r="4" />
    </svg>
  );
}

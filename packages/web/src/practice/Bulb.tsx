import { type PointerEvent, useRef, useState } from 'react';
import { useApp } from '../app/context.js';

/** Pulled so far, px, a squeeze is all that the hand has, twice an ordinary one; under a few it was a click, an ordinary one. */
const WHOLE_PX = 90;
const CLICK_PX = 8;

const MOST_EFFORT = 2;

type BulbProps = {
  /** @param effort 1 for an ordinary squeeze, up to 2 */
  readonly onSqueeze: (effort: number, atMs: number) => void;
};

/** The bulb in the hand: a click or a touch squeezes it as an ordinary hand does, pulled and let go it gives as much as it was pulled. */
export function Bulb({ onSqueeze }: BulbProps) {
  const { words } = useApp();
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const [pull, setPull] = useState<number | null>(null);
  const pulled = ({ clientX, clientY }: PointerEvent) =>
    from.current === null ? 0 : Math.hypot(clientX - from.current.x, clientY - from.current.y);
  const press = pull === null ? 0 : pull < CLICK_PX ? 1 / MOST_EFFORT : Math.min(1, pull / WHOLE_PX);
  return (
    <button
      type="button"
      className="bulb"
      aria-label={words.sentence('practice.bulb')}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = { x: event.clientX, y: event.clientY };
        setPull(0);
      }}
      onPointerMove={(event) => {
        if (from.current !== null) setPull(pulled(event));
      }}
      onPointerUp={(event) => {
        if (from.current === null) return;
        const far = pulled(event);
        from.current = null;
        setPull(null);
        onSqueeze(far < CLICK_PX ? 1 : MOST_EFFORT * Math.min(1, far / WHOLE_PX), event.timeStamp);
      }}
      onPointerCancel={() => {
        from.current = null;
        setPull(null);
      }}
      onClick={(event) => {
        // The press of an assistive tool comes without a pointer.
        if (event.detail === 0) onSqueeze(1, event.timeStamp);
      }}
    >
      <svg viewBox="0 0 240 110" aria-hidden="true">
        <path className="hose" d="M2 55 C 20 55 28 55 46 55" />
        <rect className="bulb-neck" x="42" y="44" width="24" height="22" rx="4" />
        <g transform={`translate(0 ${55 * (1 - (1 - 0.45 * press))}) scale(1 ${1 - 0.45 * press})`}>
          <path
            className="bulb-body"
            d="M64 55 C 72 18 110 6 150 8 C 198 10 230 30 230 55 C 230 80 198 100 150 102 C 110 104 72 92 64 55 Z"
          />
          <path className="bulb-line" d="M92 34 C 120 20 170 20 204 38" />
          <path className="bulb-line" d="M88 76 C 120 92 172 92 206 72" />
        </g>
      </svg>
    </button>
  );
}

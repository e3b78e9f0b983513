import { type KeyboardEvent, memo, type PointerEvent, useMemo, useRef } from 'react';
import { useApp } from '../app/context.js';
import { gaugeScale, mmHgUnder } from './gaugeGeometry.js';

/** Another moment of the same run, marked on the rim. */
export type GaugeMark = { readonly what: string; readonly mmHg: number };

type GaugeProps = {
  /** What the needle shows, for its name. */
  readonly label: string;
  /** Where the needle stands, mmHg; null for not read yet: it rests at the bottom and is drawn thin. */
  readonly mmHg: number | null;
  readonly topMmHg: number;
  readonly stepMmHg: number;
  readonly others: readonly GaugeMark[];
  readonly onRead: (mmHg: number) => void;
  /** Steps of the graduation, from where the needle stands. */
  readonly onStep: (steps: number) => void;
  /** A digit or a rubbing out, typed while the face has the focus. */
  readonly onKey: (key: string) => void;
};

/** Every numeral so many mmHg; every mark of this many is longer. */
const NUMERAL_MMHG = 20;
const LONG_MMHG = 10;

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 5,
  PageDown: -5,
};

/** A gauge of our own drawing, on which a value is read back: dragged, stepped with the arrow keys, or typed. */
export function Gauge({ label, mmHg, topMmHg, stepMmHg, others, onRead, onStep, onKey }: GaugeProps) {
  const { words } = useApp();
  const face = useRef<HTMLDivElement>(null);
  const scale = useMemo(() => gaugeScale(topMmHg, stepMmHg), [topMmHg, stepMmHg]);
  const drag = ({ clientX, clientY, buttons, isPrimary }: PointerEvent) => {
    const box = face.current?.getBoundingClientRect();
    if (box === undefined || !isPrimary || (buttons & 1) === 0) return;
    const place = {
      x: ((clientX - box.left) / box.width) * 200,
      y: ((clientY - box.top) / box.height) * 200,
    };
    const read = mmHgUnder(place, mmHg ?? 0, topMmHg, stepMmHg);
    if (read !== mmHg) onRead(read);
  };
  const press = (event: KeyboardEvent<HTMLElement>) => {
    const steps = STEPS[event.key];
    if (steps !== undefined) onStep(steps);
    else if (event.key === 'Enter') event.currentTarget.closest('form')?.requestSubmit();
    else if (event.key === 'Home') onRead(0);
    else if (event.key === 'End') onRead(topMmHg);
    else if (/^\d$/.test(event.key) || event.key === 'Backspace') onKey(event.key);
    else return;
    event.preventDefault();
  };
  const shown = mmHg ?? 0;
  return (
    <div
      ref={face}
      className={mmHg === null ? 'gauge gauge-unread' : 'gauge'}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={topMmHg}
      aria-valuenow={shown}
      aria-valuetext={
        mmHg === null ? words.sentence('moments.notRead') : words.sentence('moments.isAt', { mmHg })
      }
      onKeyDown={press}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        drag(event);
      }}
      onPointerMove={drag}
    >
      <svg viewBox="0 0 200 200" aria-hidden="true">
        <GaugeFace topMmHg={topMmHg} stepMmHg={stepMmHg} />
        {others.map((other) => {
          const { x, y } = scale.at(other.mmHg, 97);
          return other.what === 'first sound' ? (
            <circle key={`${other.what} ${other.mmHg}`} className="gauge-other" cx={x} cy={y} r="3.5" />
          ) : (
            <rect
              key={`${other.what} ${other.mmHg}`}
              className="gauge-other"
              x={x - 3}
              y={y - 3}
              width="6"
              height="6"
            />
          );
        })}
        <g transform={`rotate(${scale.degrees(shown)} 100 100)`}>
          <path className="gauge-needle" d="M98.600 116 L101.400 116 L100.400 22 L99.600 22 Z" />
        </g>
        <circle className="gauge-hub" cx="100" cy="100" r="5" />
      </svg>
    </div>
  );
}

type FaceProps = { readonly topMmHg: number; readonly stepMmHg: number };

/** The face never changes under the needle, so it is drawn once. */
export const GaugeFace = memo(function Face({ topMmHg, stepMmHg }: FaceProps) {
  const { at, marks } = gaugeScale(topMmHg, stepMmHg);
  return (
    <g>
      <circle className="gauge-face" cx="100" cy="100" r="98" />
      {marks.map((mmHg) => {
        const isLong = mmHg % LONG_MMHG === 0;
        const outer = at(mmHg, 92);
        const inner = at(mmHg, isLong ? 82 : 87);
        return (
          <line
            key={mmHg}
            className={isLong ? 'gauge-tick gauge-tick-long' : 'gauge-tick'}
            x1={inner.x}
            y1={inner.y}
            x2={outer.x}
            y2={outer.y}
          />
        );
      })}
      {marks
        .filter((mmHg) => mmHg % NUMERAL_MMHG === 0)
        .map((mmHg) => {
          const { x, y } = at(mmHg, 71);
          return (
            <text
              key={mmHg}
              className="gauge-numeral"
              x={x}
              y={y}
              dominantBaseline="central"
              textAnchor="middle"
            >
              {mmHg}
            </text>
          );
        })}
    </g>
  );
});

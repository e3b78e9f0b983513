import { PHYSIOLOGY_FIGURES } from '@evenfall/physiology';
import { useEffect, useMemo, useRef } from 'react';
import { useApp } from '../app/context.js';
import { GaugeFace } from '../pressure/Gauge.js';
import { gaugeScale } from '../pressure/gaugeGeometry.js';
import type { RoomEngine } from './engine.js';

/** Where the scale of a gauge ends, marked every 2. */
const TOP_MMHG = PHYSIOLOGY_FIGURES.cuff.scaleEndMmHg.value;
const STEP_MMHG = 2;

/** The needle as it moves: set before each picture, without smoothing. What it shows is not read out: reading it is the job. */
export function LiveGauge({ engine }: { readonly engine: RoomEngine }) {
  const { words } = useApp();
  const needle = useRef<SVGGElement>(null);
  const scale = useMemo(() => gaugeScale(TOP_MMHG, STEP_MMHG), []);
  useEffect(
    () =>
      engine.subscribe(({ now }) => {
        if (needle.current !== null) needle.current.dataset.tick = String(now.tick);
        needle.current?.setAttribute(
          'transform',
          `rotate(${scale.degrees(now.needleMmHg).toFixed(3)} 100 100)`,
        );
      }),
    [engine, scale],
  );
  return (
    <svg
      className="live-gauge"
      viewBox="0 0 200 200"
      role="img"
      aria-label={words.sentence('practice.gauge')}
    >
      <GaugeFace topMmHg={TOP_MMHG} stepMmHg={STEP_MMHG} />
      <text className="gauge-unit" x="100" y="70" textAnchor="middle">
        {words.sentence('pressure.mmHg')}
      </text>
      <g ref={needle} data-testid="needle">
        <path className="gauge-needle" d="M98.600 118 L101.400 118 L100.300 12 L99.700 12 Z" />
      </g>
      <circle className="gauge-hub" cx="100" cy="100" r="5" />
    </svg>
  );
}

import { useEffect, useRef } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { Fingertips } from './Fingertips.js';
import { type Looks, looksClass } from './looks.js';

type WristProps = {
  readonly engine: RoomEngine;
  readonly looks: Looks;
  /** Whether each pulse is heard as well, softly: somebody asked for it. */
  readonly isHeard?: boolean;
};

/** The wrist from close by, under three fingertips: the pulse swells beneath them as full as it is, and a device that can push back does. */
export function WristClose({ engine, looks, isHeard = false }: WristProps) {
  const { words } = useApp();
  useEffect(() => {
    engine.hearPulse(isHeard);
    return () => engine.hearPulse(false);
  }, [engine, isHeard]);
  const ring = useRef<SVGEllipseElement>(null);
  useEffect(
    () =>
      engine.subscribe(({ now, felt }) => {
        const swell = Math.max(0, Math.min(1.2, now.wrist * engine.visit.pulseFullness));
        ring.current?.setAttribute('rx', (24 + 16 * swell).toFixed(2));
        ring.current?.setAttribute('ry', (9 + 11 * swell).toFixed(2));
        ring.current?.setAttribute('opacity', (0.12 + 0.74 * swell).toFixed(2));
        if (felt.some(({ isFelt }) => isFelt)) push();
      }),
    [engine],
  );
  return (
    <svg
      className={`under-finger ${looksClass(looks)}`}
      viewBox="0 0 160 108"
      role="img"
      aria-label={words.sentence('practice.feltNow')}
    >
      <rect className="wrist-cloth" x="1" y="1" width="158" height="106" rx="12" />
      <path
        className="scene-skin"
        d="M1 18 C 44 22 84 27 112 26 C 130 25 144 18 159 12.500 V83.500 C 144 80 130 78 112 78 C 84 78 44 84 1 88 Z"
      />
      {/* Creases at the root of the hand, tendons along the middle. */}
      <path
        className="scene-line scene-faint"
        d="M117 27 C 122 40 122 64 117 77 M124 25 C 129 40 129 64 124 78"
      />
      <path className="scene-line scene-faint" d="M14 44 C 50 46 84 47 108 47 M20 56 C 54 56 84 55 108 54" />
      <ellipse ref={ring} className="felt-ring" cx="72" cy="64" rx="24" ry="9" />
      <Fingertips x={72} y={62} count={3} toY={107} apart={18} />
      <rect className="wrist-edge" x="1" y="1" width="158" height="106" rx="12" />
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

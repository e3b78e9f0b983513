import { backgroundThresholdDb } from '@evenfall/physiology';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import type { RoomEngine } from './engine.js';

/** So much of the last time is on the strip. */
const SECONDS = 6;
const WIDTH = 300;
const HEIGHT = 48;
/** A sound of this level fills the height, dB. */
const FULL_DB = 50;

/** What is heard, to be seen: each sound a stroke as tall as it is loud, a muffled one open at its top. It moves to the left. */
export function SoundStrip(props: {
  readonly engine: RoomEngine;
  readonly noiseDbA: number;
  /** Where room is scarce what it means is said elsewhere. */
  readonly isBare?: boolean;
}) {
  const { engine, noiseDbA, isBare = false } = props;
  const { words } = useApp();
  const clear = useRef<SVGPathElement>(null);
  const muffled = useRef<SVGPathElement>(null);
  useEffect(() => {
    const threshold = backgroundThresholdDb(noiseDbA);
    let heard: { at: number; height: number; isMuffled: boolean }[] = [];
    return engine.subscribe(({ now, sounds }) => {
      for (const { atSeconds, levelDb, isMuffled } of sounds) {
        const over = levelDb - threshold;
        if (over > 0)
          heard.push({ at: atSeconds, height: 6 + (38 * Math.min(over, FULL_DB)) / FULL_DB, isMuffled });
      }
      heard = heard.filter(({ at }) => at > now.seconds - SECONDS);
      const strokes = (isMuffled: boolean) =>
        heard
          .filter((one) => one.isMuffled === isMuffled)
          .map(({ at, height }) => {
            const x = (WIDTH - 8 - ((now.seconds - at) / SECONDS) * WIDTH).toFixed(1);
            return isMuffled
              ? `M${x} ${HEIGHT - 2} v${-height + 8} m-4 -4 a4 4 0 0 0 8 0`
              : `M${x} ${HEIGHT - 2} v${-height}`;
          })
          .join(' ');
      clear.current?.setAttribute('d', strokes(false));
      muffled.current?.setAttribute('d', strokes(true));
    });
  }, [engine, noiseDbA]);
  return (
    <figure className="sound-figure">
      <svg
        className="sound-strip"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={words.sentence('practice.sounds')}
      >
        <path className="scene-line scene-faint" d={`M0 ${HEIGHT - 2} H${WIDTH}`} />
        <path ref={clear} className="strip-sound" d="" />
        <path ref={muffled} className="strip-muffled" d="" />
      </svg>
      {isBare ? null : (
        <figcaption className="small soft">{words.sentence('practice.soundsLegend')}</figcaption>
      )}
    </figure>
  );
}

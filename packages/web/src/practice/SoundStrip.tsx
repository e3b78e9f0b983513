import { backgroundThresholdDb } from '@evenfall/physiology';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import type { RoomEngine } from './engine.js';

/** So much of the last time is on the strip. */
const SECONDS = 6;
const WIDTH = 300;
const HEIGHT = 48;
/** The second sound of the heart is drawn as so much of its height, so that the two are told apart. */
const SECOND_SHARE = 0.45;

const STROKE = {
  clear: (x: string, height: number) => `M${x} ${HEIGHT - 2} v${-height}`,
  muffled: (x: string, height: number) => `M${x} ${HEIGHT - 2} v${-height + 8} m-4 -4 a4 4 0 0 0 8 0`,
  second: (x: string, height: number) => `M${x} ${HEIGHT - 2} v${-height} m-3 0 h6`,
};
/** A sound of this level fills the height, dB. */
const FULL_DB = 50;

/**
 * What is heard, to be seen: each sound a stroke as tall as it is loud, a muffled one open at its top; of the heart the first tall, the
 * second short with a bar across its top. It moves to the left.
 */
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
  const second = useRef<SVGPathElement>(null);
  const [isAtApex, setAtApex] = useState(engine.visit.snapshot().isAtApex);
  useEffect(() => {
    const threshold = backgroundThresholdDb(noiseDbA);
    let heard: { at: number; height: number; how: 'clear' | 'muffled' | 'second' }[] = [];
    return engine.subscribe(({ now, sounds, heart }) => {
      const add = (at: number, levelDb: number, how: (typeof heard)[number]['how'], share = 1) => {
        const over = levelDb - threshold;
        if (over > 0) heard.push({ at, height: share * (6 + (38 * Math.min(over, FULL_DB)) / FULL_DB), how });
      };
      for (const one of sounds) add(one.atSeconds, one.levelDb, one.isMuffled ? 'muffled' : 'clear');
      for (const one of heart) {
        const isFirst = one.heart === 'first';
        add(one.atSeconds, one.levelDb, isFirst ? 'clear' : 'second', isFirst ? 1 : SECOND_SHARE);
      }
      heard = heard.filter(({ at }) => at > now.seconds - SECONDS);
      const strokes = (wanted: (typeof heard)[number]['how']) =>
        heard
          .filter(({ how }) => how === wanted)
          .map(({ at, height }) => {
            const x = (WIDTH - 8 - ((now.seconds - at) / SECONDS) * WIDTH).toFixed(1);
            return STROKE[wanted](x, height);
          })
          .join(' ');
      clear.current?.setAttribute('d', strokes('clear'));
      muffled.current?.setAttribute('d', strokes('muffled'));
      second.current?.setAttribute('d', strokes('second'));
      setAtApex(now.isAtApex);
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
        <path ref={second} className="strip-sound" d="" />
      </svg>
      {isBare ? null : (
        <figcaption className="small soft">
          {words.sentence(isAtApex ? 'practice.heartLegend' : 'practice.soundsLegend')}
        </figcaption>
      )}
    </figure>
  );
}

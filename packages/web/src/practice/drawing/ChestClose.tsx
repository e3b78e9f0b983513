import { useEffect, useRef } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { type Looks, looksClass } from './looks.js';

/** How far the outline is drawn out for each mm that the chest moves. */
const PX_PER_MM = 1.5;

/** Shoulders, chest and belly from the front and close by, so that each breath can be watched on a small screen too. */
export function ChestClose({
  engine,
  looks,
  pieceAt,
}: {
  readonly engine: RoomEngine;
  readonly looks: Looks;
  /** Where on the chest the chest piece lies; null: nowhere. */
  readonly pieceAt: 'chest' | 'apex' | null;
}) {
  const { words } = useApp();
  const trunk = useRef<SVGPathElement>(null);
  const folds = useRef<SVGPathElement>(null);
  const upper = useRef<SVGGElement>(null);
  useEffect(
    () =>
      engine.subscribe(({ now }) => {
        const out = now.chestMm * PX_PER_MM;
        trunk.current?.setAttribute('d', trunkPath(out));
        folds.current?.setAttribute('d', foldsPath(out));
        upper.current?.setAttribute('transform', `translate(0 ${(-0.45 * out).toFixed(2)})`);
      }),
    [engine],
  );
  return (
    <svg
      className={`scene ${looksClass(looks)}`}
      viewBox="0 0 320 200"
      role="img"
      aria-label={words.sentence('practice.chest')}
    >
      <path className="room-wall" d="M0 0 H320 V200 H0 Z" />
      <path className="chair-back" d="M62 200 V74 C 62 58 74 50 92 50 H228 C 246 50 258 58 258 74 V200 Z" />
      <g ref={upper}>
        <path
          className="scene-skin"
          d="M141 0 H179 V34 C 190 42 196 46 206 48 L160 74 L114 48 C 124 46 130 42 141 34 Z"
        />
        <path
          className="scene-line scene-faint"
          d="M148 12 C 152 26 156 34 160 42 M172 12 C 168 26 164 34 160 42"
        />
      </g>
      {/* The arms hang beside and do not move. */}
      <path className="scene-sleeve" d="M92 60 C 70 66 62 88 58 126 L54 200 H92 L96 120 Z" />
      <path className="scene-sleeve" d="M228 60 C 250 66 258 88 262 126 L266 200 H228 L224 120 Z" />
      <path ref={trunk} className="scene-shirt" d={trunkPath(0)} />
      <path ref={folds} className="scene-line scene-faint" d={foldsPath(0)} />
      {pieceAt === null ? null : (
        <g transform={pieceAt === 'apex' ? 'translate(64 26)' : ''}>
          <path className="hose" d="M132 118 C 120 150 112 176 110 204" />
          <circle className="piece" cx="132" cy="112" r="13" />
          <circle className="piece-rim" cx="132" cy="112" r="8" />
        </g>
      )}
    </svg>
  );
}

const px = (at: number) => at.toFixed(2);

/** The trunk, its sides so many px further out and its shoulders higher. */
function trunkPath(out: number): string {
  const [left, right, up] = [px(88 - out), px(232 + out), px(52 - 0.5 * out)];
  return [
    `M116 ${px(46 - 0.45 * out)} C 104 ${up} 96 ${up} 90 ${px(60 - 0.4 * out)}`,
    `C ${px(86 - 0.7 * out)} 84 ${left} 108 ${left} 132 C ${left} 160 ${px(92 - 0.6 * out)} 182 94 200`,
    `H226 C ${px(228 + 0.6 * out)} 182 ${right} 160 ${right} 132 C ${right} 108 ${px(234 + 0.7 * out)} 84 230 ${px(60 - 0.4 * out)}`,
    `C 224 ${up} 216 ${up} 204 ${px(46 - 0.45 * out)} L160 ${px(76 - 0.4 * out)} Z`,
  ].join(' ');
}

/** The row of buttons and two folds that the breath spreads. */
function foldsPath(out: number): string {
  return [
    `M160 ${px(76 - 0.4 * out)} V200`,
    `M${px(118 - 0.6 * out)} 96 C ${px(124 - 0.5 * out)} 120 ${px(124 - 0.5 * out)} 150 ${px(116 - 0.5 * out)} 178`,
    `M${px(202 + 0.6 * out)} 96 C ${px(196 + 0.5 * out)} 120 ${px(196 + 0.5 * out)} 150 ${px(204 + 0.5 * out)} 178`,
  ].join(' ');
}

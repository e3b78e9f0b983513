import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { FOCUSABLE } from './focusable.js';
import { ARM, arteryY, feltAt, type Laid, PIECE_RADIUS, within } from './placing.js';
import { Spot } from './Spot.js';

export type InHand = 'chest-piece' | 'fingers';

type ArmProps = {
  readonly engine: RoomEngine;
  readonly seed: number;
  readonly armCm: number;
  readonly isCuffOn: boolean;
  /** Half the width of the cuff's bladder, as drawn beside that of an adult's. */
  readonly cuffScale: number;
  readonly hasTape: boolean;
  readonly inHand: InHand;
  /** Where the chest piece lies, or the fingers; null: nowhere. */
  readonly laid: Laid | null;
  readonly onLay?: ((place: { readonly x: number; readonly y: number }) => void) | undefined;
  /** How it lies, in words. */
  readonly laidText: string;
  readonly isFeelingWrist: boolean;
  readonly onWrist?: (() => void) | undefined;
};

const KEY_PX = 4;
/** An arm of this girth is drawn as it stands. */
const DRAWN_CM = 29;

/** The arm on the table from above, palm up: tape, cuff, crook of the elbow, wrist. */
export function ArmScene(props: ArmProps) {
  const { engine, seed, armCm, isCuffOn, cuffScale, hasTape, inHand, laid, onLay, isFeelingWrist } = props;
  const { words } = useApp();
  const say = words.sentence;
  const svg = useRef<SVGSVGElement>(null);
  const wrist = useRef<SVGCircleElement>(null);
  const elbow = useRef<SVGCircleElement>(null);
  const cuff = useRef<SVGPathElement>(null);
  const artery = arteryY(seed);
  const clarity = laid === null || inHand !== 'fingers' ? 0 : feltAt(laid, artery);
  const girth = Math.max(0.62, Math.min(1.5, armCm / DRAWN_CM));
  const half = 46 * girth;
  useEffect(
    () =>
      engine.subscribe(({ now }) => {
        // The air in the cuff rounds it.
        const bulge = Math.min(1, now.cuffMmHg / 160) * 9;
        cuff.current?.setAttribute('d', cuffPath(half, cuffScale, bulge));
        const swell = Math.max(0, now.wrist);
        wrist.current?.setAttribute('r', (9 + 9 * swell).toFixed(2));
        wrist.current?.setAttribute('opacity', (0.25 + 0.75 * Math.min(1, swell)).toFixed(2));
        elbow.current?.setAttribute('r', (8 + 9 * swell * clarity).toFixed(2));
        elbow.current?.setAttribute('opacity', Math.min(1, swell * clarity).toFixed(2));
      }),
    [engine, half, cuffScale, clarity],
  );
  const placeOf = ({ clientX, clientY }: PointerEvent) => {
    const box = svg.current?.getBoundingClientRect();
    if (box === undefined) return null;
    return within({
      x: ((clientX - box.left) / box.width) * 480,
      y: ((clientY - box.top) / box.height) * 240,
    });
  };
  const drag = (event: PointerEvent) => {
    const place = placeOf(event);
    if (place !== null && (event.buttons & 1) === 1) onLay?.(place);
  };
  const step = (event: KeyboardEvent) => {
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (by === undefined || onLay === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const [x = 0, y = 0] = by;
    const from = laid ?? { x: ARM.elbowX + 30, y: 160 };
    onLay(within({ x: from.x + x * KEY_PX, y: from.y + y * KEY_PX }));
  };
  const dy = half - 46;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be touched is no form
    <svg ref={svg} className="scene" viewBox="0 0 480 240" role="group" aria-label={say('practice.arm')}>
      <path className="scene-table" d="M0 36 H480 V212 H0 Z" />
      <path className="scene-line scene-faint" d="M0 36 H480 M0 212 H480" />
      {/* Sleeve, upper arm, forearm, hand. */}
      <path
        className="scene-skin"
        d={`M20 ${80 - dy} C 90 ${70 - dy} 150 ${78 - dy} 214 ${86 - dy * 0.7} C 236 ${90 - dy * 0.5} 252 ${92 - dy * 0.4} 270 90 C 330 86 380 98 420 108 C 440 110 462 104 478 100 V160 C 462 158 440 156 420 156 C 380 160 330 176 268 ${170 + dy * 0.4} C 240 ${172 + dy * 0.7} 150 ${168 + dy} 20 ${170 + dy} Z`}
      />
      <path
        className="scene-sleeve"
        d={`M0 ${70 - dy} C 30 ${66 - dy} 52 ${70 - dy} 66 ${72 - dy} C 72 ${100} 72 ${140} 66 ${172 + dy} C 44 ${174 + dy} 20 ${176 + dy} 0 ${178 + dy} Z`}
      />
      <path
        className="scene-line scene-faint"
        d={`M244 ${96 - dy * 0.4} C 252 112 252 148 244 ${168 + dy * 0.5}`}
      />
      <path
        className="scene-line scene-faint"
        d="M418 112 C 424 124 424 144 418 154 M426 112 C 431 124 431 144 426 154"
      />

      {hasTape ? <Tape armCm={armCm} half={half} /> : null}

      {isCuffOn ? (
        <g>
          <path ref={cuff} className="scene-cuff" d={cuffPath(half, cuffScale, 0)} />
          <path className="scene-cuff-line" d={`M${214 - 12} ${82 - dy} V${172 + dy}`} />
          <path className="hose" d={`M150 ${170 + dy} C 150 214 200 226 240 238`} />
          <path className="hose" d={`M170 ${170 + dy} C 172 206 230 216 280 238`} />
        </g>
      ) : null}

      {/* The wrist. */}
      <Spot label={say(isFeelingWrist ? 'practice.wristAway' : 'practice.wrist')} onTouch={props.onWrist}>
        <circle className="scene-hit" cx={ARM.wrist.x} cy={ARM.wrist.y} r="28" />
        <circle className="wrist-place" cx={ARM.wrist.x} cy={ARM.wrist.y} r="9" />
        {isFeelingWrist ? (
          <>
            <circle ref={wrist} className="felt-ring" cx={ARM.wrist.x} cy={ARM.wrist.y} r="9" />
            <path
              className="scene-finger"
              d="M404 240 C 404 200 408 170 414 150 C 417 142 428 142 430 150 C 434 172 436 200 436 240 Z"
            />
          </>
        ) : null}
      </Spot>

      {onLay === undefined && laid === null ? null : (
        <g
          className="laying"
          role="slider"
          {...(onLay === undefined ? {} : FOCUSABLE)}
          aria-valuemin={ARM.field.top}
          aria-valuemax={ARM.field.bottom}
          aria-valuenow={Math.round(laid?.y ?? ARM.field.bottom)}
          aria-valuetext={props.laidText}
          aria-label={`${say(inHand === 'fingers' ? 'practice.feelElbow' : 'practice.chestPiece')}. ${say('practice.chestPieceHint')}`}
          onKeyDown={step}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            const place = placeOf(event);
            if (place !== null) onLay?.(place);
          }}
          onPointerMove={drag}
        >
          <rect
            className="scene-hit laying-field"
            x={ARM.field.left - 18}
            y={ARM.field.top - 18}
            width={ARM.field.right - ARM.field.left + 36}
            height={ARM.field.bottom - ARM.field.top + 36}
            rx="18"
          />
          {laid === null ? null : inHand === 'fingers' ? (
            <g key="fingers" transform={`translate(${laid.x} ${laid.y})`}>
              <circle ref={elbow} className="felt-ring" r="8" opacity="0" />
              <path
                className="scene-finger"
                d="M-9 80 C -9 40 -8 16 -5 4 C -3 -4 5 -4 7 4 C 10 18 12 40 12 80 Z"
              />
            </g>
          ) : (
            <g key="piece" transform={`translate(${laid.x} ${laid.y})`}>
              <path className="hose" d="M0 0 C 30 30 60 66 64 130" />
              <circle className="piece" r={PIECE_RADIUS} />
              <circle className="piece-rim" r={laid.isPressed ? 9 : 12} />
            </g>
          )}
        </g>
      )}
    </svg>
  );
}

function cuffPath(half: number, scale: number, bulge: number): string {
  const left = 214 - 118 * scale;
  const dy = half - 46;
  const top = 78 - dy;
  const low = 172 + dy;
  return `M${left} ${top} C ${left + 30} ${top - bulge} 180 ${top - bulge} 214 ${top + 4} V${low} C 180 ${low + bulge} ${left + 30} ${low + bulge} ${left} ${low} Z`;
}

/** A tape round the middle of the upper arm, with the marks about the place where it meets its end. */
function Tape({ armCm, half }: { readonly armCm: number; readonly half: number }) {
  const marks = [-2, -1, 0, 1, 2].map((by) => Math.round(armCm) + by);
  const dy = half - 46;
  return (
    <g>
      <path className="tape" d={`M128 ${72 - dy} H144 V${176 + dy} H128 Z`} />
      <g transform="translate(40 4)">
        <rect className="tape" x="0" y="0" width="190" height="34" rx="3" />
        {marks.map((cm, at) => (
          <g key={cm} transform={`translate(${95 + (cm - armCm) * 38} 0)`}>
            <path className="scene-line" d="M0 0 V10" />
            {at < marks.length - 1 ? <path className="scene-line scene-faint" d="M19 0 V6" /> : null}
            <text className="scene-text" y="26" textAnchor="middle">
              {cm}
            </text>
          </g>
        ))}
        <path className="tape-end" d="M95 44 L88 56 L102 56 Z M95 44 V-2" />
      </g>
    </g>
  );
}

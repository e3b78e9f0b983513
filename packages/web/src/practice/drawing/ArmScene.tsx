import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { Fingertips } from './Fingertips.js';
import { FOCUSABLE } from './focusable.js';
import { type Looks, looksClass } from './looks.js';
import {
  ARM,
  armPlaceOf,
  arteryY,
  feltAt,
  type Laid,
  mirrored,
  PIECE_RADIUS,
  VIEW,
  within,
} from './placing.js';
import { Spot } from './Spot.js';

export type InHand = 'chest-piece' | 'fingers';

type ArmProps = {
  readonly engine: RoomEngine;
  readonly seed: number;
  readonly looks: Looks;
  readonly armCm: number;
  readonly isLeft?: boolean;
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

/** A hand lies palm up, its thumb away from the body: what is drawn of a left arm seen from above is turned over for a right one. */
const TURNED_OVER = 'translate(0 256) scale(1 -1)';

/**
 * The arm on the table from above, palm up: tape, cuff, crook of the elbow, wrist. Drawn for the right arm; the left one is
 * seen as in a mirror, but for what is written on it.
 */
export function ArmScene(props: ArmProps) {
  const { engine, seed, looks, armCm, isCuffOn, cuffScale, hasTape, inHand, laid, onLay, isFeelingWrist } =
    props;
  const isLeft = props.isLeft ?? false;
  const { words } = useApp();
  const say = words.sentence;
  const svg = useRef<SVGSVGElement>(null);
  const wrist = useRef<SVGCircleElement>(null);
  const elbow = useRef<SVGCircleElement>(null);
  const cuff = useRef<SVGPathElement>(null);
  const laying = useRef<SVGGElement>(null);
  const isLaying = onLay !== undefined || laid !== null;
  useEffect(() => {
    // The picture keeps a finger that drags: parts of a drawing take no `touch-action` everywhere, and the page would scroll.
    const part = isLaying ? laying.current : null;
    const keep = (event: TouchEvent) => event.preventDefault();
    part?.addEventListener('touchmove', keep, { passive: false });
    return () => part?.removeEventListener('touchmove', keep);
  }, [isLaying]);
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
        const swell = Math.max(0, now.wrist * engine.visit.pulseFullness);
        wrist.current?.setAttribute('r', (12 + 15 * swell).toFixed(2));
        wrist.current?.setAttribute('opacity', (0.25 + 0.75 * Math.min(1, swell)).toFixed(2));
        elbow.current?.setAttribute('r', (10 + 15 * swell * clarity).toFixed(2));
        elbow.current?.setAttribute('opacity', Math.min(1, swell * clarity).toFixed(2));
      }),
    [engine, half, cuffScale, clarity],
  );
  const placeOf = (event: PointerEvent) => {
    const box = svg.current?.getBoundingClientRect();
    return box === undefined ? null : armPlaceOf(event, box, isLeft);
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
    onLay(within({ x: from.x + (isLeft ? -x : x) * KEY_PX, y: from.y + y * KEY_PX }));
  };
  const dy = half - 46;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be touched is no form
    <svg
      ref={svg}
      className={`scene ${looksClass(looks)}`}
      viewBox={`${VIEW.x} ${VIEW.y} ${VIEW.width} ${VIEW.height}`}
      role="group"
      aria-label={say('practice.arm')}
    >
      <path className="room-floor" d="M0 0 H600 V240 H0 Z" />
      <path className="scene-table" d="M0 30 H600 V222 H0 Z" />
      {/* The grain of the table, and a cloth under the arm. */}
      <path
        className="room-grain"
        d="M0 46 C 150 42 300 52 600 44 M0 204 C 180 210 380 200 600 208 M470 60 C 520 58 560 62 600 60"
      />
      <g transform={isLeft ? `translate(${mirrored(0, true)} 0) scale(-1 1)` : ''}>
        <path className="room-towel" d="M44 56 H452 L458 198 H40 Z" />
        <path className="room-towel-line" d="M44 66 H452 M41 188 H457" />
        <g transform={TURNED_OVER}>
          {/* The hand lies open, palm up: thumb, four fingers, the lines of the palm. */}
          <Hand />
          {/* Sleeve, upper arm, forearm. */}
          <path
            className="scene-skin"
            d={`M20 ${80 - dy} C 90 ${70 - dy} 150 ${78 - dy} 214 ${86 - dy * 0.7} C 236 ${90 - dy * 0.5} 252 ${92 - dy * 0.4} 270 90 C 330 86 380 98 420 108 L446 106 L446 157 L420 156 C 380 160 330 176 268 ${170 + dy * 0.4} C 240 ${172 + dy * 0.7} 150 ${168 + dy} 20 ${170 + dy} Z`}
          />
          <path className="scene-fill" d="M440 106.900 H452 V156.200 H440 Z" />
          <path
            className="scene-line scene-faint"
            d={`M244 ${96 - dy * 0.4} C 252 112 252 148 244 ${168 + dy * 0.5}`}
          />
          <path
            className="scene-line scene-faint"
            d="M418 112 C 424 124 424 144 418 154 M426 112 C 431 124 431 144 426 154"
          />
        </g>
        <path
          className="scene-sleeve"
          d={`M0 ${70 - dy} C 30 ${66 - dy} 52 ${70 - dy} 66 ${72 - dy} C 72 ${100} 72 ${140} 66 ${172 + dy} C 44 ${174 + dy} 20 ${176 + dy} 0 ${178 + dy} Z`}
        />

        {hasTape ? <Tape armCm={armCm} half={half} isLeft={isLeft} /> : null}

        {isCuffOn ? (
          <g>
            <g transform={TURNED_OVER}>
              <path ref={cuff} className="scene-cuff" d={cuffPath(half, cuffScale, 0)} />
              <path className="scene-cuff-line" d={`M${214 - 12} ${82 - dy} V${172 + dy}`} />
              <path
                className="scene-cuff-seam"
                d={`M${214 - 118 * cuffScale + 16} ${80 - dy} V${172 + dy}`}
              />
            </g>
            <path className="cuff-mark" d={`M196 ${150 + dy} l7 12 l-14 0 Z`} />
            <path className="hose" d={`M150 ${170 + dy} C 150 214 200 226 240 244`} />
            <path className="hose" d={`M170 ${170 + dy} C 172 206 230 216 280 244`} />
          </g>
        ) : null}

        {/* The wrist. */}
        <Spot label={say(isFeelingWrist ? 'practice.wristAway' : 'practice.wrist')} onTouch={props.onWrist}>
          <circle className="scene-hit" cx={ARM.wrist.x} cy={ARM.wrist.y} r="28" />
          <circle className="wrist-place" cx={ARM.wrist.x} cy={ARM.wrist.y} r="9" />
          {isFeelingWrist ? (
            <>
              <circle ref={wrist} className="felt-ring" cx={ARM.wrist.x} cy={ARM.wrist.y} r="9" />
              <Fingertips x={ARM.wrist.x} y={ARM.wrist.y + 4} count={3} toY={246} />
            </>
          ) : null}
        </Spot>

        {isLaying ? (
          <g
            ref={laying}
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
                <Fingertips x={0} y={4} count={2} toY={110} />
              </g>
            ) : (
              <g key="piece" transform={`translate(${laid.x} ${laid.y})`}>
                <path className="hose hose-thin" d="M0 0 C 30 30 60 66 64 140" />
                <circle className="piece" r={PIECE_RADIUS} />
                <circle className="piece-rim" r={laid.isPressed ? 9 : 12} />
              </g>
            )}
          </g>
        ) : null}
      </g>
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

/** The open hand from above, its palm up. */
function Hand() {
  return (
    <g>
      <path
        className="scene-skin"
        d="M440 110 C 452 98 462 84 476 70 C 484 62 496 66 494 78 C 492 90 484 98 482 106 Z"
      />
      <path
        className="scene-skin"
        d="M436 106 C 456 100 474 100 492 104 L566 100 C 577 100 577 113 566 114 L520 118 L574 117 C 585 118 585 130 574 131 L522 132 L568 134 C 578 136 577 147 567 147 L516 146 L548 151 C 557 154 555 163 546 162 C 520 162 506 166 488 166 C 466 168 450 160 436 157 Z"
      />
      <path
        className="scene-line scene-faint"
        d="M470 104 C 462 122 466 146 478 158 M484 112 C 494 120 500 132 500 146 M520 118 H508 M522 132 H508 M516 146 L506 145"
      />
    </g>
  );
}

/** A tape round the middle of the upper arm, with the marks about the place where it meets its end. */
function Tape(props: { readonly armCm: number; readonly half: number; readonly isLeft: boolean }) {
  const { armCm, half, isLeft } = props;
  const marks = [-2, -1, 0, 1, 2].map((by) => Math.round(armCm) + by);
  const dy = half - 46;
  return (
    <g>
      <path className="tape" d={`M128 ${72 - dy} H144 V${176 + dy} H128 Z`} />
      <g transform="translate(42 15)">
        <rect className="tape" x="0" y="0" width="190" height="34" rx="3" />
        {marks.map((cm, at) => (
          <g key={cm} transform={`translate(${95 + (cm - armCm) * 38} 0)`}>
            <path className="scene-line" d="M0 0 V10" />
            {at < marks.length - 1 ? <path className="scene-line scene-faint" d="M19 0 V6" /> : null}
            <text className="scene-text" y="26" textAnchor="middle" transform={isLeft ? 'scale(-1 1)' : ''}>
              {cm}
            </text>
          </g>
        ))}
        <path className="tape-end" d="M95 44 L88 56 L102 56 Z M95 44 V-2" />
      </g>
    </g>
  );
}

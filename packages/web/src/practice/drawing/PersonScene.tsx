import type { Arranged, Circumstances } from '@evenfall/physiology';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { Backdrop, OnTheTable } from './Backdrop.js';
import { type ClockTouch, clockSays, isTooSoon, satAfter, satMinutes } from './clockSays.js';
import { Head } from './Head.js';
import { Legs } from './Legs.js';
import { type Looks, looksClass } from './looks.js';
import { Spot } from './Spot.js';

type SceneProps = {
  readonly engine: RoomEngine;
  readonly circumstances: Circumstances;
  readonly looks: Looks;
  /** Somebody who is unwell lies propped up in bed. */
  readonly isInBed?: boolean;
  /** In a bay of an emergency department, behind its curtain. */
  readonly isInBay?: boolean;
  readonly isCuffOn: boolean;
  /** Whether the chest piece lies on the chest. */
  readonly isOnChest: boolean;
  /** Whether it lies at the apex, and how it is laid there or taken away. */
  readonly isAtApex: boolean;
  readonly onApex: () => void;
  /** Puts something right; absent while the cuff is up. */
  readonly onArrange?: ((change: Arranged) => void) | undefined;
  /** What a touch of the clock does. */
  readonly clock: ClockTouch;
  /** Lets them sit: until five minutes are over, and between two inflations for a minute more. */
  readonly onRest: () => void;
  /** What is to be said of a part that was touched. */
  readonly onSay: (text: string) => void;
};

/** How far the chest is drawn out for each mm of its movement. */
const PX_PER_MM = 1.1;
/** A seat is as high for a child: what is smaller is drawn about the hip. */
const HIP = { x: 166, y: 214 };
const FOOT_BELOW_HIP = 71;

/** The person on a chair beside a table, or in bed where they are unwell, from the side: what is not as it should be is seen here, and put right by a touch. */
export function PersonScene(props: SceneProps) {
  const { isInBed = false, isInBay = false } = props;
  const { engine, circumstances, looks, isCuffOn, isOnChest, isAtApex, clock, onArrange, onRest, onSay } =
    props;
  const { words } = useApp();
  const chest = useRef<SVGPathElement>(null);
  const say = words.sentence;
  const minutes = useMinutes(engine, circumstances.restMinutes);
  const { hasLegsCrossed, isTalking, hasBackUnsupported, hasFullBladder } = circumstances;
  const isUp = circumstances.posture === 'standing';
  const isArmLow = circumstances.armBelowHeartCm !== 0 || circumstances.isArmUnsupported;
  /** A touch puts right what is not as it should be; of the rest it says how it is. */
  const touched = (isWrong: boolean, change: Arranged, wrong: string, right: string) => () => {
    if (isWrong) onArrange?.(change);
    onSay(
      isWrong && onArrange === undefined
        ? `${wrong} ${say(clock === 'at-end' ? 'practice.noMoreTime' : 'practice.fixedNow')}`
        : right,
    );
  };
  useEffect(
    () =>
      engine.subscribe(({ now }) => {
        chest.current?.setAttribute('d', chestPath(now.chestMm * PX_PER_MM));
      }),
    [engine],
  );
  const lean = hasBackUnsupported && !isUp;
  const askForQuiet = touched(
    isTalking,
    { isTalking: false },
    say('practice.talking'),
    say('practice.quiet'),
  );
  const size = `translate(${HIP.x} ${HIP.y}) scale(${looks.size.toFixed(3)}) translate(${-HIP.x} ${-HIP.y})`;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be touched is no form
    <svg
      className={`scene ${looksClass(looks)}`}
      viewBox="0 0 480 300"
      role="group"
      aria-label={say(circumstances.isQuieter ? 'practice.personSideRoom' : 'practice.person')}
    >
      <Backdrop isSideRoom={circumstances.isQuieter} isBay={isInBay} />

      {/* The clock on the wall: its long hand goes with the minutes that they have sat. */}
      <Spot
        label={`${say('practice.clock')}: ${say('practice.sat', { minutes })}. ${say(clockSays(minutes, clock))}`}
        onTouch={() => {
          if (clock !== 'rest') return onSay(say(clockSays(minutes, clock)));
          onRest();
          onSay(say('practice.sat', { minutes: satAfter(minutes) }));
        }}
        className={isTooSoon(minutes, clock) ? 'scene-wrong' : ''}
      >
        <circle className="scene-hit" cx="424" cy="56" r="40" />
        <circle className="scene-face" cx="424" cy="56" r="31" />
        {Array.from({ length: 12 }, (_, at) => at * 30).map((turn) => (
          <path
            key={turn}
            className={turn % 90 === 0 ? 'scene-line' : 'scene-line scene-faint'}
            d="M424 28 V33"
            transform={`rotate(${turn} 424 56)`}
          />
        ))}
        <path className="scene-line" d="M424 56 L409 48" />
        <path className="scene-hand" d="M424 56 V33" transform={`rotate(${minutes * 6} 424 56)`} />
        <circle className="scene-eye" cx="424" cy="56" r="3" />
        <text className="scene-text" x="424" y="106" textAnchor="middle">
          {say('practice.sat', { minutes })}
        </text>
      </Spot>

      <ellipse className="room-shadow" cx="190" cy="285" rx="104" ry="6" />
      {isInBed ? <Bed /> : <Chair />}
      {looks.size < 1 && !isInBed ? <Footstool topY={HIP.y + FOOT_BELOW_HIP * looks.size} /> : null}
      <g transform={isUp ? 'translate(62 62) scale(0.78)' : size}>
        <Legs
          isCrossed={hasLegsCrossed && !isUp}
          isUp={isUp}
          isLaid={isInBed}
          label={say(
            hasLegsCrossed ? 'practice.legsCrossed' : isInBed ? 'practice.legsLaid' : 'practice.legsFlat',
          )}
          onTouch={touched(
            hasLegsCrossed,
            { hasLegsCrossed: false },
            say('practice.legsCrossed'),
            say(isInBed ? 'practice.legsLaid' : 'practice.legsFlat'),
          )}
        />

        {/* Trunk and head lean forward together. */}
        <g className="scene-lean" transform={lean ? 'rotate(11 168 214) translate(14 2)' : ''}>
          <Spot
            label={say(hasBackUnsupported ? 'practice.backFree' : 'practice.backRests')}
            onTouch={touched(
              hasBackUnsupported,
              { hasBackUnsupported: false },
              say('practice.backFree'),
              say('practice.backRests'),
            )}
            className={hasBackUnsupported ? 'scene-wrong' : ''}
          >
            <path ref={chest} className="scene-shirt" d={chestPath(0)} />
            <path className="scene-line scene-faint" d="M158 128 C 152 156 152 188 158 214" />
          </Spot>
          <Spot
            label={say(isTalking ? 'practice.talking' : 'practice.quiet')}
            onTouch={askForQuiet}
            className={isTalking ? 'scene-wrong' : ''}
          >
            <circle className="scene-hit" cx="170" cy="64" r="40" />
            <Head looks={looks} isTalking={isTalking} />
            <path
              className="scene-collar"
              d="M154 104 C 164 96 178 97 186 104 L180 112 C 172 106 164 106 158 112 Z"
            />
          </Spot>
          <Spot label={say(isAtApex ? 'practice.apexAway' : 'practice.listenApex')} onTouch={props.onApex}>
            <circle className="scene-hit" cx="197" cy="160" r="20" />
            {isAtApex ? null : <circle className="wrist-place" cx="197" cy="160" r="7" />}
          </Spot>
          {isOnChest || isAtApex ? (
            <g transform={isAtApex ? 'translate(-3 30)' : ''} className="piece-laid">
              <path
                className="hose hose-thin"
                d="M200 128 C 232 124 246 96 300 92 C 340 90 380 120 404 178"
              />
              <circle className="piece" cx="200" cy="130" r="9" />
              <circle className="piece-rim" cx="200" cy="130" r="5" />
            </g>
          ) : null}
        </g>
        <g transform={lean ? 'translate(26 4)' : ''}>
          <Spot
            label={say(isArmLow ? 'practice.armLow' : 'practice.armRests')}
            onTouch={touched(
              isArmLow,
              { armBelowHeartCm: 0, isArmUnsupported: false },
              say('practice.armLow'),
              say('practice.armRests'),
            )}
            className={isArmLow ? 'scene-wrong' : ''}
          >
            {isArmLow ? <ArmHanging isCuffOn={isCuffOn} /> : <ArmLaid isCuffOn={isCuffOn} />}
          </Spot>
        </g>
      </g>

      {/* The table stands before the legs and under the arm; for somebody who stands it is raised. */}
      <g transform={isUp ? 'translate(0 12)' : ''}>
        <g className="scene-table">
          <path d="M248 197 H466 V206 H248 Z" />
          <path d="M262 206 H272 V285 H262 Z M442 206 H452 V285 H442 Z" />
        </g>
        <path className="scene-line scene-faint" d="M272 216 H442" />
        <OnTheTable />
      </g>

      {isTalking ? (
        // biome-ignore lint/a11y/noStaticElementInteractions: the head that says it is the button, for keys and voices
        <g
          transform={lean ? 'translate(34 8)' : isUp ? 'translate(4 24)' : ''}
          className="scene-said spot"
          onClick={askForQuiet}
        >
          <path
            className="scene-bubble"
            d="M226 26 h116 a11 11 0 0 1 11 11 v16 a11 11 0 0 1 -11 11 h-96 l-20 12 l6 -13 a11 11 0 0 1 -17 -10 v-16 a11 11 0 0 1 11 -11 Z"
          />
          <text className="scene-text" x="284" y="51" textAnchor="middle">
            {say('practice.says')}
          </text>
        </g>
      ) : null}
      {hasFullBladder ? (
        <Spot
          label={say('practice.bladder')}
          onTouch={touched(
            true,
            { hasFullBladder: false },
            say('practice.bladder'),
            say('practice.bladderEmpty'),
          )}
          className="scene-wrong"
        >
          <circle className="scene-bubble" cx="224" cy="116" r="4" />
          <circle className="scene-bubble" cx="236" cy="124" r="6" />
          <path
            className="scene-bubble"
            d="M252 116 h112 a12 12 0 0 1 12 12 v14 a12 12 0 0 1 -12 12 h-112 a12 12 0 0 1 -12 -12 v-14 a12 12 0 0 1 12 -12 Z"
          />
          <text className="scene-text" x="308" y="140" textAnchor="middle">
            {say('practice.saysBladder')}
          </text>
        </Spot>
      ) : null}
    </svg>
  );
}

/** Whole minutes that they have sat by now; drawn anew once a minute. */
function useMinutes(engine: RoomEngine, restMinutes: number): number {
  const [minutes, setMinutes] = useState(() => Math.floor(satMinutes(restMinutes, engine.visit.seconds)));
  useEffect(
    () => engine.subscribe(({ now }) => setMinutes(Math.floor(satMinutes(restMinutes, now.seconds)))),
    [engine, restMinutes],
  );
  return minutes;
}

function Chair() {
  return (
    <g className="scene-wood">
      <path d="M117 92 C 113 148 115 190 119 218" />
      <path d="M131 92 C 127 148 129 190 133 218" />
      <path d="M115 100 H133 M114 124 H131 M114 150 H130" />
      <path className="scene-seat" d="M112 217 H216 V224 H112 Z" />
      <path d="M122 224 L116 285 M206 224 L212 285" />
      <path d="M119 256 H209" />
    </g>
  );
}

/** A bed with its head raised. */
function Bed() {
  return (
    <g className="scene-wood">
      <path className="scene-seat" d="M92 104 L118 92 L156 214 L140 232 Z" />
      <path className="scene-seat" d="M130 220 H384 V236 H130 Z" />
      <path d="M150 236 V276 M364 236 V276 M150 262 H364" />
      <circle cx="150" cy="280" r="5" />
      <circle cx="364" cy="280" r="5" />
    </g>
  );
}

/** Under feet that do not reach the floor. */
function Footstool({ topY }: { readonly topY: number }) {
  return (
    <path
      className="scene-seat"
      d={`M196 ${topY.toFixed(1)} H252 V285 H246 L242 ${(topY + 6).toFixed(1)} H206 L202 285 H196 Z`}
    />
  );
}

function ArmHanging({ isCuffOn }: { readonly isCuffOn: boolean }) {
  return (
    <>
      <path className="scene-sleeve" d="M156 116 C 168 108 182 112 184 126 L188 158 L168 162 Z" />
      <path
        className="scene-skin"
        d="M169 160 L188 157 C 192 176 200 190 206 204 L214 224 C 216 232 212 240 207 240 C 202 240 198 234 198 226 L188 206 C 178 194 172 178 169 160 Z"
      />
      <path className="scene-line scene-faint" d="M205 226 L208 238 M201 228 L203 237" />
      {isCuffOn ? <path className="scene-cuff" d="M166 150 L188 146 L194 174 L172 178 Z" /> : null}
    </>
  );
}

function ArmLaid({ isCuffOn }: { readonly isCuffOn: boolean }) {
  return (
    <>
      <path className="scene-sleeve" d="M154 118 C 166 106 182 110 188 124 L204 146 L188 160 Z" />
      <path
        className="scene-skin"
        d="M188 158 L204 145 L236 166 C 266 172 296 175 318 178 C 328 176 338 177 348 180 C 355 182 354 187 348 188 C 352 190 350 194 344 193 C 336 195 328 194 320 192 C 290 190 250 192 226 188 Z"
      />
      <path className="scene-line scene-faint" d="M334 184 L350 185 M332 189 L346 191" />
      {isCuffOn ? (
        <>
          <path className="scene-cuff" d="M190 136 L214 152 L202 174 L178 154 Z" />
          <path className="hose hose-thin" d="M206 168 C 232 196 280 186 352 192" />
        </>
      ) : null}
    </>
  );
}

/** The trunk from the side, its front so many px further out. */
function chestPath(out: number): string {
  const front = (x: number, share: number) => (x + out * share).toFixed(2);
  return [
    'M146 112 C 150 100 172 98 182 104',
    `C ${front(200, 0.6)} 112 ${front(207, 1)} 132 ${front(205, 1)} 150`,
    `C ${front(204, 0.8)} 172 ${front(206, 0.4)} 190 206 214`,
    'L140 220 C 136 190 134 140 146 112 Z',
  ].join(' ');
}

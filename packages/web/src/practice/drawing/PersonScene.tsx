import type { Circumstances } from '@evenfall/physiology';
import { useEffect, useRef } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { Spot } from './Spot.js';

type SceneProps = {
  readonly engine: RoomEngine;
  readonly circumstances: Circumstances;
  readonly isCuffOn: boolean;
  /** Puts something right; absent once the cuff was up, or while one only looks on. */
  readonly onPrepare?: ((change: Partial<Circumstances>) => void) | undefined;
  /** What is to be said of a part that was touched; absent while one only looks on. */
  readonly onSay?: ((text: string) => void) | undefined;
};

/** How far the chest is drawn out for each mm of its movement. */
const PX_PER_MM = 0.9;

/** The person on a chair beside a table, from the side: what is not as it should be is seen here, and put right by a touch. */
export function PersonScene({ engine, circumstances, isCuffOn, onPrepare, onSay }: SceneProps) {
  const { words } = useApp();
  const chest = useRef<SVGPathElement>(null);
  const say = words.sentence;
  const { hasLegsCrossed, isTalking, hasBackUnsupported, hasFullBladder, restMinutes } = circumstances;
  const isArmLow = circumstances.armBelowHeartCm !== 0 || circumstances.isArmUnsupported;
  /** A touch puts right what is not as it should be; of the rest it says how it is. */
  const touched = (isWrong: boolean, change: Partial<Circumstances>, wrong: string, right: string) => {
    if (onSay === undefined) return undefined;
    return () => {
      if (isWrong) onPrepare?.(change);
      onSay(isWrong && onPrepare === undefined ? `${wrong} ${say('practice.fixedNow')}` : right);
    };
  };
  useEffect(
    () =>
      engine.subscribe(({ now }) => {
        const out = now.chestMm * PX_PER_MM;
        chest.current?.setAttribute('d', chestPath(out));
      }),
    [engine],
  );
  const minutes = Math.round(restMinutes);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be touched is no form
    <svg className="scene" viewBox="0 0 480 300" role="group" aria-label={say('practice.person')}>
      <path className="scene-floor" d="M8 286 H472" />
      <path className="scene-wall" d="M8 248 H118 M300 248 H472" />

      {/* A window, so that it is a place. */}
      <g className="scene-back">
        <rect x="30" y="24" width="76" height="92" rx="2" />
        <path d="M68 24 V116 M30 70 H106" />
        <path d="M22 122 H114" />
      </g>

      {/* The clock on the wall: the long hand goes with the minutes of rest. */}
      <Spot
        label={`${say('practice.clock')}: ${say('practice.sat', { minutes })}. ${say('practice.letSit')}`}
        onTouch={touched(
          restMinutes < 5,
          { restMinutes: 5, observerMinutes: 5 },
          say('practice.sat', { minutes }),
          say('practice.sat', { minutes: 5 }),
        )}
        className={restMinutes < 5 ? 'scene-wrong' : ''}
      >
        <circle className="scene-hit" cx="424" cy="58" r="40" />
        <circle className="scene-face" cx="424" cy="58" r="30" />
        {[0, 90, 180, 270].map((turn) => (
          <path key={turn} className="scene-line" d="M424 31 V36" transform={`rotate(${turn} 424 58)`} />
        ))}
        <path className="scene-line" d="M424 58 L410 50" />
        <path className="scene-hand" d="M424 58 V36" transform={`rotate(${restMinutes * 6} 424 58)`} />
        <text className="scene-text" x="424" y="106" textAnchor="middle">
          {say('practice.sat', { minutes })}
        </text>
      </Spot>

      {/* The chair. */}
      <g className="scene-wood">
        <path d="M122 96 C 118 150 120 190 124 218" />
        <path d="M134 96 C 130 150 132 190 136 218" />
        <path d="M118 220 H214" />
        <path d="M126 222 L120 284 M206 222 L212 284" />
      </g>

      {/* Legs. */}
      <Spot
        label={say(hasLegsCrossed ? 'practice.legsCrossed' : 'practice.legsFlat')}
        onTouch={touched(
          hasLegsCrossed,
          { hasLegsCrossed: false },
          say('practice.legsCrossed'),
          say('practice.legsFlat'),
        )}
        className={hasLegsCrossed ? 'scene-wrong' : ''}
      >
        <rect className="scene-hit" x="180" y="196" width="110" height="92" rx="12" />
        {hasLegsCrossed ? (
          <>
            <path
              className="scene-cloth"
              d="M168 206 C 196 196 222 198 240 206 C 246 224 240 252 238 272 L224 272 C 224 250 226 236 220 226 L168 226 Z"
            />
            <path
              className="scene-cloth"
              d="M170 200 C 204 186 236 190 258 206 C 268 222 280 236 292 250 L282 260 C 266 250 252 236 242 222 L172 222 Z"
            />
            <path className="scene-shoe" d="M282 260 L292 248 L306 262 C 306 268 298 270 290 268 Z" />
            <path className="scene-shoe" d="M223 272 H239 L256 280 V285 H222 Z" />
          </>
        ) : (
          <>
            <path
              className="scene-cloth scene-far"
              d="M172 206 C 204 196 232 200 254 210 C 260 226 256 254 254 272 L240 272 C 240 250 240 236 234 228 L172 226 Z"
            />
            <path className="scene-shoe scene-far" d="M240 272 H255 L274 280 V285 H239 Z" />
            <path
              className="scene-cloth"
              d="M166 204 C 198 194 222 198 240 208 C 246 226 242 254 240 272 L226 272 C 226 250 226 238 220 228 L166 226 Z"
            />
            <path className="scene-shoe" d="M225 272 H241 L260 280 V285 H224 Z" />
          </>
        )}
      </Spot>

      {/* Trunk, head and arm lean forward together. */}
      <g className="scene-lean" transform={hasBackUnsupported ? 'rotate(11 168 214) translate(14 2)' : ''}>
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
        </Spot>
        <Spot
          label={say(isTalking ? 'practice.talking' : 'practice.quiet')}
          onTouch={touched(isTalking, { isTalking: false }, say('practice.talking'), say('practice.quiet'))}
          className={isTalking ? 'scene-wrong' : ''}
        >
          <circle className="scene-hit" cx="170" cy="64" r="40" />
          <path className="scene-skin" d="M158 84 L160 104 L180 104 L180 88 Z" />
          <path
            className="scene-skin"
            d="M148 58 C 148 36 164 26 178 28 C 194 30 200 44 199 56 L205 68 L199 71 L199 82 C 196 90 186 90 178 89 C 160 88 148 78 148 58 Z"
          />
          <path
            className="scene-hair"
            d="M146 66 C 138 40 154 18 180 20 C 196 21 204 32 202 42 C 186 40 170 44 168 58 C 166 68 158 72 154 82 C 149 78 147 72 146 66 Z"
          />
          <circle className="scene-eye" cx="190" cy="56" r="1.800" />
          <path className="scene-line" d={isTalking ? 'M192 76 Q 196 80 199 76' : 'M191 77 H198'} />
        </Spot>
      </g>
      <g transform={hasBackUnsupported ? 'translate(26 4)' : ''}>
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
          {isArmLow ? (
            <>
              <path className="scene-sleeve" d="M156 116 C 168 108 182 112 184 126 L188 158 L168 162 Z" />
              <path
                className="scene-skin"
                d="M169 160 L188 157 C 192 176 200 190 206 204 L212 226 C 208 234 202 232 200 226 L188 206 C 178 194 172 178 169 160 Z"
              />
              {isCuffOn ? <path className="scene-cuff" d="M166 150 L188 146 L194 174 L172 178 Z" /> : null}
            </>
          ) : (
            <>
              <path className="scene-sleeve" d="M154 118 C 166 106 182 110 188 124 L204 146 L188 160 Z" />
              <path
                className="scene-skin"
                d="M188 158 L204 145 L236 166 C 266 172 300 174 326 178 C 336 180 344 184 344 188 C 344 192 330 193 322 192 C 290 190 250 192 226 188 Z"
              />
              {isCuffOn ? <path className="scene-cuff" d="M190 136 L214 152 L202 174 L178 154 Z" /> : null}
            </>
          )}
        </Spot>
      </g>

      {/* The table stands before the legs and under the arm. */}
      <g className="scene-table">
        <path d="M248 197 H462 V206 H248 Z" />
        <path d="M268 206 V284 M446 206 V284" />
      </g>
      <g className="scene-back">
        <circle cx="420" cy="178" r="17" />
        <path d="M420 178 L410 168 M420 195 V197" />
        <path d="M403 184 C 384 196 372 190 352 190" />
      </g>

      {isTalking ? (
        <g transform={hasBackUnsupported ? 'translate(34 8)' : ''} className="scene-said">
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
          <circle className="scene-bubble" cx="224" cy="112" r="4" />
          <circle className="scene-bubble" cx="236" cy="120" r="6" />
          <path
            className="scene-bubble"
            d="M252 112 h104 a12 12 0 0 1 12 12 v14 a12 12 0 0 1 -12 12 h-104 a12 12 0 0 1 -12 -12 v-14 a12 12 0 0 1 12 -12 Z"
          />
          <text className="scene-text" x="304" y="136" textAnchor="middle">
            {say('practice.saysBladder')}
          </text>
        </Spot>
      ) : null}
    </svg>
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

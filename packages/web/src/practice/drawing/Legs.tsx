import { Spot } from './Spot.js';

type LegsProps = {
  readonly isCrossed: boolean;
  readonly isUp: boolean;
  /** Stretched out on a bed. */
  readonly isLaid?: boolean;
  readonly label: string;
  readonly onTouch: () => void;
};

/** Both feet on the floor, one knee over the other, on the feet, or laid on a bed. */
export function Legs({ isCrossed, isUp, isLaid = false, label, onTouch }: LegsProps) {
  if (isUp)
    return (
      <g>
        <path
          className="scene-cloth scene-far"
          d="M172 212 H206 C 206 236 204 262 204 278 H188 C 184 256 178 232 172 212 Z"
        />
        <path className="scene-shoe scene-far" d="M187 276 H205 L222 283 V288 H186 Z" />
        <path
          className="scene-cloth"
          d="M140 216 H196 C 192 240 188 262 186 278 H166 C 158 256 148 236 140 216 Z"
        />
        <path className="scene-shoe" d="M165 276 H187 L206 283 V288 H164 Z" />
      </g>
    );
  if (isLaid && !isCrossed)
    return (
      <Spot label={label} onTouch={onTouch}>
        <rect className="scene-hit" x="206" y="196" width="150" height="36" rx="12" />
        <path
          className="scene-cloth scene-far"
          d="M170 202 C 200 190 236 192 262 200 C 292 206 318 206 338 207 L340 221 L172 222 Z"
        />
        <path
          className="scene-cloth"
          d="M166 206 C 196 194 226 198 252 206 C 284 212 312 212 332 213 L334 223 L166 223 Z"
        />
        <path className="scene-skin" d="M330 223 L332 204 C 333 197 343 196 345 203 L345 223 Z" />
      </Spot>
    );
  return (
    <Spot label={label} onTouch={onTouch} className={isCrossed ? 'scene-wrong' : ''}>
      <rect className="scene-hit" x="180" y="196" width="110" height="92" rx="12" />
      {isCrossed ? (
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
  );
}

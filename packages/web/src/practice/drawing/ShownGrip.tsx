import type { ShownStep } from '@evenfall/practice';

/** What the hand on bulb and valve does at a step. */
export function gripOf(code: ShownStep['code']): 'pumping' | 'falling' | 'open' | 'still' {
  if (code === 'feeling' || code === 'pumping') return 'pumping';
  if (code === 'lost' || code === 'waiting' || code === 'emptying' || code === 'over') return 'open';
  return STILL.includes(code) ? 'still' : 'falling';
}

const STILL: readonly ShownStep['code'][] = [
  'looking',
  'at-apex',
  'both-counted',
  'other-gauge',
  'quieter',
  'loud',
  'measured',
  'pulse',
  'pulse-counted',
  'breaths',
  'breaths-counted',
];

/** Where air is drawn that goes out at the valve: a little of it, or all. */
const PUFFS = { still: [], pumping: [], falling: [78], open: [74, 82, 90] } as const;

/** The hand's part of it as a small picture: the bulb is squeezed, the valve lets a little air out, or all of it. The words beside it say the same. */
export function ShownGrip({ code }: { readonly code: ShownStep['code'] }) {
  const grip = gripOf(code);
  const puffs = PUFFS[grip];
  return (
    <svg className={`shown-grip shown-${grip}`} viewBox="0 0 240 110" aria-hidden="true">
      <path className="hose" d="M2 70 C 20 70 28 70 46 70" />
      <rect className="bulb-neck" x="42" y="58" width="26" height="24" rx="4" />
      <g
        transform={`rotate(${grip === 'open' ? 90 : grip === 'falling' ? 35 : 0} 55 50)`}
        className="shown-screw"
      >
        <path className="valve-screw" d="M48 58 V44 H62 V58 Z M40 36 H70 V46 H40 Z" />
      </g>
      {puffs.map((x, at) => (
        <path key={x} className="shown-air" d={`M${x} ${24 + 8 * at} q 7 -6 14 0 t 14 0`} />
      ))}
      <g className="shown-bulb">
        <path
          className="bulb-body"
          d="M66 70 C 74 34 110 24 150 25 C 198 26 230 46 230 70 C 230 94 198 106 150 106 C 110 106 74 100 66 70 Z"
        />
        <path className="bulb-line" d="M94 50 C 120 38 170 38 204 54" />
      </g>
      {grip === 'pumping' ? <path className="shown-press" d="M150 2 V18 M142 11 L150 20 L158 11" /> : null}
    </svg>
  );
}

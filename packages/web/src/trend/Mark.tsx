import type { TrendValue } from '@evenfall/record';
import { isUpOrLying, numbersOf } from './bands.js';

type MarkProps = {
  readonly value: TrendValue;
  readonly x: number;
  readonly y: (number: number) => number;
  readonly weight: 'thin' | 'plain' | 'bold';
  /** Of another site than the upper arm, or one of several claims. */
  readonly isDoubtful: boolean;
  /** A supervisor did not rely on it: struck through. */
  readonly isStruck?: boolean;
  /** Said by another system or a table. */
  readonly isElsewhere?: boolean;
};

const WING = 5;
const RISE = 7;

/** A hollow triangle whose tip stands at a value: down onto it, or up to it. */
function triangle(x: number, tip: number, rise: number): string {
  return `M${x} ${tip} l-${WING} ${rise} h${2 * WING} z`;
}

/** Values from elsewhere: hollow triangles with their tip at each number, those of one pressure joined by dots. */
function elsewhere(value: TrendValue, x: number, y: MarkProps['y']) {
  const [high, low] = numbersOf(value);
  if (high === undefined) return null;
  const name = 'trend-mark trend-plain trend-open';
  return (
    <>
      {low === undefined ? null : (
        <path className="trend-mark trend-dots" d={`M${x} ${y(high)} V${y(low)}`} />
      )}
      <path className={name} d={triangle(x, y(high), -RISE - 2)} />
      {low === undefined ? null : <path className={name} d={triangle(x, y(low), RISE + 2)} />}
    </>
  );
}

/** A stroke across what is drawn, from the left above to the right below. */
function stroke(x: number, middle: number) {
  return <path className="trend-mark trend-stroke" d={`M${x - 8} ${middle - 6} l16 12`} />;
}

/** Where a value is struck through: a pressure in the middle between its numbers. */
function middleOf(value: TrendValue, y: MarkProps['y']): number | null {
  const numbers = numbersOf(value);
  return numbers.length === 0 ? null : numbers.reduce((all, one) => all + y(one), 0) / numbers.length;
}

/**
 * One value as paper charts draw it: a caret down at the systolic, one up at the diastolic, joined; a dot for the
 * pulse. Every other sign has a shape of its own, whatever the colour.
 * What other systems say is hollow triangles, our decision. Source of the rest: common practice of paper observation charts, no source.
 */
export function Mark({ isStruck = false, ...props }: MarkProps) {
  const { value, x, y, isElsewhere = false } = props;
  if (isElsewhere) return elsewhere(value, x, y);
  const middle = isStruck ? middleOf(value, y) : null;
  return (
    <>
      <Shape {...props} />
      {isUpOrLying(value) ? <Foot {...props} isUp={value.posture === 'stand'} /> : null}
      {middle === null ? null : stroke(x, middle)}
    </>
  );
}

/** Under a pressure that was not taken sitting: an upright stroke for standing, a level one for lying. Our decision. */
function Foot({ value, x, y, weight, isUp }: MarkProps & { readonly isUp: boolean }) {
  const [systolic = 0, diastolic] = numbersOf(value);
  // Below the caret of the diastolic; by feel, below the stroke under the systolic.
  const foot = diastolic === undefined ? y(systolic) + 16 : y(diastolic) + RISE + 3;
  return (
    <path
      className={`trend-mark trend-${weight}`}
      d={isUp ? `M${x} ${foot} v9` : `M${x - WING} ${foot + 1} h${2 * WING}`}
    />
  );
}

function Shape({ value, x, y, weight, isDoubtful }: MarkProps) {
  const name = `trend-mark trend-${weight}${isDoubtful ? ' trend-doubtful' : ''}`;
  switch (value.of) {
    case 'pressure': {
      const top = y(value.systolic);
      const caret = `M${x - WING} ${top - RISE} L${x} ${top} L${x + WING} ${top - RISE}`;
      if (value.diastolic === null) {
        return <path className={`${name} trend-felt`} d={`${caret} M${x} ${top + 3} v10`} />;
      }
      const foot = y(value.diastolic);
      return (
        <path
          className={name}
          d={`${caret} M${x} ${top} V${foot} M${x - WING} ${foot + RISE} L${x} ${foot} L${x + WING} ${foot + RISE}`}
        />
      );
    }
    case 'pulse':
      return <circle className={`${name} trend-full`} cx={x} cy={y(value.perMinute)} r={3.6} />;
    case 'breaths':
      return <circle className={`${name} trend-open`} cx={x} cy={y(value.perMinute)} r={3.6} />;
    case 'temperature':
      return <path className={name} d={`M${x - 4} ${y(value.celsius) - 4} l8 8 m0 -8 l-8 8`} />;
    case 'oxygen-saturation':
      return (
        <rect
          className={`${name} ${value.onOxygen ? 'trend-full' : 'trend-open'}`}
          x={x - 3.5}
          y={y(value.percent) - 3.5}
          width={7}
          height={7}
        />
      );
    case 'pain':
      return <path className={`${name} trend-open`} d={`M${x} ${y(value.score) - 5} l5 5 l-5 5 l-5 -5 z`} />;
    case 'consciousness':
      return null;
  }
}

import type { TrendValue } from '@evenfall/record';

type MarkProps = {
  readonly value: TrendValue;
  readonly x: number;
  readonly y: (number: number) => number;
  readonly weight: 'thin' | 'plain' | 'bold';
  /** Of another site than the upper arm, or one of several claims. */
  readonly isDoubtful: boolean;
};

const WING = 5;
const RISE = 7;

/**
 * One value as paper charts draw it: a caret down at the systolic, one up at the diastolic, joined; a dot for the
 * pulse. Every other sign has a shape of its own, whatever the colour.
 * Source: common practice of paper observation charts, no source.
 */
export function Mark({ value, x, y, weight, isDoubtful }: MarkProps) {
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

import { inUnit, type Posture } from '@evenfall/clinical';
import type { TrendPoint, TrendRound, TrendValue } from '@evenfall/record';

/** What is drawn on one scale, one above the other. Pressure and pulse share one, as on paper. */
export type BandId = 'circulation' | 'breaths' | 'oxygen-saturation' | 'temperature' | 'pain';

type Band = {
  readonly id: BandId;
  readonly holds: readonly TrendValue['of'][];
  /** What the scale shows at least, in the unit of the sign, so that a steady person looks steady. */
  readonly least: readonly [number, number];
  readonly step: number;
  /** The most that can be, where there is one. */
  readonly most: number | null;
  readonly height: number;
};

/** Temperatures in the unit of the reader: each shows about the same span. */
const TEMPERATURES = {
  Cel: { id: 'temperature', holds: ['temperature'], least: [35.5, 39], step: 0.5, most: null, height: 96 },
  '[degF]': { id: 'temperature', holds: ['temperature'], least: [96, 102], step: 1, most: null, height: 96 },
} as const satisfies Record<string, Band>;

/** Which scales there are, temperatures in the unit that is kept. The least that each shows is a choice of drawing and judges nothing. */
export const BANDS: readonly Band[] = [
  { id: 'circulation', holds: ['pressure', 'pulse'], least: [40, 180], step: 20, most: null, height: 280 },
  { id: 'breaths', holds: ['breaths'], least: [8, 28], step: 4, most: null, height: 96 },
  { id: 'oxygen-saturation', holds: ['oxygen-saturation'], least: [88, 100], step: 4, most: 100, height: 84 },
  TEMPERATURES.Cel,
  { id: 'pain', holds: ['pain'], least: [0, 10], step: 5, most: 10, height: 72 },
];

/** Every number that a value draws. */
export function numbersOf(value: TrendValue): readonly number[] {
  switch (value.of) {
    case 'pressure':
      return value.diastolic === null ? [value.systolic] : [value.systolic, value.diastolic];
    case 'pulse':
    case 'breaths':
      return [value.perMinute];
    case 'temperature':
      return [value.celsius];
    case 'oxygen-saturation':
      return [value.percent];
    case 'pain':
      return [value.score];
    case 'consciousness':
      return [];
  }
}

/** A band with what it draws and the range of its scale, on whole steps. */
export type DrawnBand = Band & {
  readonly points: readonly TrendPoint[];
  readonly range: readonly [number, number];
  /** A kept number in the unit of the scale. */
  readonly onScale: (kept: number) => number;
};

/** The bands that have something to draw, in order; temperatures on a scale in the unit given. */
export function bandsOf(
  rounds: readonly TrendRound[],
  temperature: keyof typeof TEMPERATURES = 'Cel',
): readonly DrawnBand[] {
  return BANDS.flatMap((kept): DrawnBand[] => {
    const isTemperature = kept.id === 'temperature';
    const band = isTemperature ? TEMPERATURES[temperature] : kept;
    const onScale = (number: number) => (isTemperature ? inUnit(number, temperature) : number);
    const points = rounds.flatMap((round) =>
      round.points.filter(({ value }) => kept.holds.includes(value.of)),
    );
    if (points.length === 0) return [];
    const numbers = points.flatMap(({ value }) => numbersOf(value).map(onScale));
    const low = Math.min(band.least[0], ...numbers);
    const high = Math.max(band.least[1], ...numbers);
    const top = Math.ceil(high / band.step) * band.step;
    const range = [
      Math.max(Math.floor(low / band.step) * band.step, 0),
      band.most === null ? top : Math.min(top, band.most),
    ] as const;
    return [{ ...band, points, range, onScale }];
  });
}

/** An average is drawn as a pressure is. */
export function drawnAverage({
  systolic,
  diastolic,
  posture,
}: NonNullable<TrendRound['average']>): TrendValue {
  return { of: 'pressure', systolic, diastolic, posture, written: '', isAveraged: true, side: null };
}

/** Whether a pressure was taken standing or lying: it is no swing beside one taken sitting. */
export function isUpOrLying(
  value: TrendValue,
): value is TrendValue & { readonly of: 'pressure'; readonly posture: Posture } {
  return value.of === 'pressure' && value.posture !== null && value.posture !== 'sit';
}

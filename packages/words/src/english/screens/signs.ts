import type { Say } from '../../say.js';

type Text = { text: string };

/** To show how one is typed. */
const EXAMPLE_CELSIUS = 36.8;

/** The signs that are neither counted nor taken with a cuff: as a chart writes them, and the page that takes them. */
export const signs = {
  temperatureIs: (f: { celsius: number; site: string }, say: Say) =>
    `${say.temperature(f.celsius)}, ${f.site}`,
  onAirIs: (f: { percent: string }) => `${f.percent} % on air`,
  onOxygenIs: (f: { percent: string }) => `${f.percent} % on oxygen`,
  onOxygenByIs: (f: { percent: string; how: string }) => `${f.percent} % on oxygen, ${f.how}`,
  painOnLine: (f: { mm: string }) => `${f.mm} mm of 100`,
  painIs: (f: { score: string }) => `${f.score} of 10`,
  weightIs: (f: { kg: number; how: string }, say: Say) => `${say.mass(f.kg)}, ${f.how}`,
  heightIs: (f: { cm: number; how: string }, say: Say) => `${say.length(f.cm)}, ${f.how}`,
  lengthIs: (f: { cm: number; how: string }, say: Say) => `${say.length(f.cm)} lying, ${f.how}`,
  litres: (f: { litres: number }, say: Say) => `${say.short(f.litres, 2)} L/min`,
  share: (f: { percent: number }, say: Say) => `${say.short(f.percent, 1)} % oxygen`,

  title: 'Other signs',
  also: 'Also taken',
  alsoHint: 'Not asked for here. Open one to take it.',
  keep: 'Keep it',
  another: 'Take another',
  unkept: (f: Text) => `Typed and not kept: ${f.text}. Keep it, or it is not signed with this round.`,
  chooseOne: 'Choose one.',
  typeNumber: 'Type a number.',
  keptAs: 'Kept as',
  notSaid: 'not said',

  Cel: 'Temperature (°C)',
  '[degF]': 'Temperature (°F)',
  temperatureHint: (_f: object, say: Say) => `With a decimal, such as ${say.temperature(EXAMPLE_CELSIUS)}.`,
  site: 'Taken where',
  percent: 'Saturation (%)',
  breathes: 'The person breathes',
  air: 'air',
  oxygen: 'oxygen',
  device: 'Given by',
  deviceHint: 'Mask, nasal cannula, … in your own words.',
  litresPerMinute: 'Flow (L/min)',
  oxygenPercent: 'Oxygen in it (%)',
  pulsePerMinute: 'Pulse on the oximeter (/min)',
  pulseHint:
    'Held against the pulse that was felt: if the two disagree, the saturation is not to be relied on.',
  probe: 'Probe on',
  scaleTwo: (f: { prescriber: string; low: number; high: number }, say: Say) =>
    `Judged by scale 2, ${say.short(f.low)} to ${say.short(f.high)} %. Decided by ${f.prescriber}.`,
  way: 'Asked for',
  numeric: 'in numbers',
  'visual-analogue': 'on a line',
  lineMm: 'Mark on the line, mm',
  lineHint: 'A line of 100 mm: measured from the end that says no pain.',
  verbal: 'in words',
  score: 'Pain from 0, none, to 10, the worst there could be',
  word: 'Pain',
  more: 'Where, and when',
  moving: 'Felt',
  isMoving: 'when moving',
  isResting: 'at rest',
  where: 'Where it hurts',
  level: 'The person is',
  glasgow: 'Glasgow scale',
  glasgowHint: 'All three parts, or none. The level above is never made from them.',
  eyes: 'Eyes',
  speech: 'Speech',
  movement: 'Movement',
  points: (f: { points: number; text: string }, say: Say) => `${say.short(f.points)} · ${f.text}`,
  notTestable: 'cannot be tested',
  kg: 'Weight (kg)',
  '[lb_av]': 'Weight (lb)',
  cm: 'Height (cm)',
  '[in_i]': 'Height (in)',
  how: 'How it is known',
  lying: 'Measured lying: a length',
} as const;

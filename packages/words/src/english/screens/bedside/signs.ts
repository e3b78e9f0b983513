import type { Say } from '../../../say.js';

type Text = { text: string };

/** What a round says of the signs that are neither counted nor taken with a cuff, as a chart writes them; the page that takes them has the rest, in `../signs.ts`. */
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
  change: 'Change it',
  typedAs: 'Typed as',
  unkept: (f: Text) => `Typed and not kept: ${f.text}. Keep it, or it is not signed with this round.`,
  'unit-celsius': 'Unit of the temperature',
  'unit-kg': 'Unit of the weight',
  'unit-cm': 'Unit of the height',
  'unit-armCm': 'Unit of the circumference',
} as const;

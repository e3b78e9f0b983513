import { APART_BY_THEMSELVES, changeBetween, type PublishedApart, type SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { besideText, signedText } from '../figure/besideText.js';
import type { DataTable } from '../figure/figure.js';
import { type RuleSet, ruleSetText } from './reportPage.js';

const PARTS = ['mean', 'morning', 'evening', 'day', 'night'] as const;
type Part = (typeof PARTS)[number];
type Limits = { readonly systolic: SidedLimit | null; readonly diastolic: SidedLimit | null };
type Both = {
  readonly first: number | null;
  readonly second: number | null;
  readonly difference: number | null;
};
type BothMeans = { readonly systolic: Both; readonly diastolic: Both; readonly pulse: Both };

/** One of two series, as it stands in the table of both. */
export type SideOfTwo = {
  readonly of: 'home' | 'ambulatory';
  /** What it is called: its kind and its days. */
  readonly name: string;
  /** Readings in the mean, on so many days at home (null of a recording), and those left out of it. */
  readonly used: number;
  readonly days: number | null;
  readonly dropped: number;
  /** Whether something for the pressure was taken then; null where nobody said. */
  readonly treated: boolean | null;
  readonly note: string | null;
  readonly arms: readonly ('left' | 'right')[];
  readonly devices: readonly string[];
  readonly ruleSet: RuleSet | null;
  readonly limits: { readonly [P in 'mean' | 'day' | 'night']: Limits };
};

/** Two series of one person, the earlier first, and what their means come to side by side: the second minus the first. */
export type TwoSeries = {
  readonly first: SideOfTwo;
  readonly second: SideOfTwo;
  readonly compared: { readonly [P in Exclude<Part, 'mean'>]: BothMeans | null } & {
    readonly mean: BothMeans;
    readonly isLike: boolean;
  };
};

/** The same as page and PDF say it. */
export type BesideSaid = {
  /** How far the mean moved, `−15.7/−8.2`; both to one decimal. */
  readonly moved: string;
  readonly table: DataTable;
  /** By which rules each was made, once where it is one set, and what was noted with each. */
  readonly beside: readonly string[];
  /** That the two are not alike; null where they are. */
  readonly unlike: string | null;
  /** How far such means lie apart by themselves, as it was published; null where nothing of the kind was. */
  readonly sure: string | null;
};

/** Both means, what each rests on, and how sure the difference is. */
export function besideSaid({ first, second, compared }: TwoSeries, words: Words): BesideSaid {
  const say = words.sentence;
  const both = (heading: string, of: (one: SideOfTwo) => string) => [heading, of(first), of(second), ''];
  const all = [first, second];
  const ifAny = (heading: string, of: (one: SideOfTwo) => string) =>
    all.some((one) => of(one) !== '') ? [both(heading, of)] : [];
  const pulse = compared.mean.pulse;
  const whole = (value: number | null) => (value === null ? '–' : words.say.number(value));
  return {
    moved: [compared.mean.systolic, compared.mean.diastolic]
      .map(({ difference }) => signedText(difference, words))
      .join('/'),
    table: {
      caption: say('away.besideTitle'),
      columns: ['', first.name, second.name, say('away.laterMinusEarlier')],
      rows: [
        ...PARTS.flatMap((part) => {
          const means = compared[part];
          if (means === null) return [];
          const text = pairOf(part, means, first, second, words);
          return [[headingOf(part, first, second, words), text.first, text.second, text.moved]];
        }),
        [say('away.pulse'), whole(pulse.first), whole(pulse.second), signedText(pulse.difference, words, 0)],
        both(say('away.besideReadings'), (one) => restsOn(one, words)),
        both(say('report.medicines'), (one) => treatedText(one, words)),
        ...ifAny(say('report.arm'), ({ arms }) => arms.map((arm) => say(`facts.${arm}`)).join(', ')),
        ...ifAny(say('report.device'), ({ devices }) => devices.join(', ')),
      ],
    },
    beside: besideLines(first, second, words),
    unlike: compared.isLike ? null : say('away.besideUnlike'),
    sure: sureText(first, second, compared, words),
  };
}

/** A mean over 24 hours is called by that: it stands beside those of day and night. */
function headingOf(part: Part, first: SideOfTwo, second: SideOfTwo, words: Words): string {
  const isOfDay = first.of === 'ambulatory' && second.of === 'ambulatory';
  return words.sentence(part === 'mean' && isOfDay ? 'series.whole' : `series.${part}`);
}

/** Both means of a part and how the second moved; each stands on its own side of the limit of its series. */
function pairOf(part: Part, means: BothMeans, first: SideOfTwo, second: SideOfTwo, words: Words) {
  const limits = ({ limits }: SideOfTwo) => limits[part === 'day' || part === 'night' ? part : 'mean'];
  const [a, b] = [limits(first), limits(second)];
  const { systolic, diastolic } = means;
  const upper = besideText(systolic.first, systolic.second, [a.systolic, b.systolic], words);
  const lower = besideText(diastolic.first, diastolic.second, [a.diastolic, b.diastolic], words);
  const pair = (one: 'first' | 'second' | 'moved') => `${upper[one]}/${lower[one]}`;
  return { first: pair('first'), second: pair('second'), moved: pair('moved') };
}

/** How many readings a mean is of, on how many days at home, and how many were left out. */
function restsOn({ used, days, dropped }: SideOfTwo, words: Words): string {
  const mean =
    days === null
      ? words.sentence('away.count', { readings: used })
      : words.sentence('away.besideCount', { readings: used, days });
  return dropped === 0 ? mean : `${mean}, ${words.sentence('away.besideDropped', { readings: dropped })}`;
}

function treatedText({ treated }: SideOfTwo, words: Words): string {
  if (treated === null) return words.sentence('away.treated-unknown');
  return words.sentence(treated ? 'report.medicineTaken' : 'report.medicineNone');
}

function besideLines(first: SideOfTwo, second: SideOfTwo, words: Words): string[] {
  const line = (label: string, text: string) => words.sentence('report.line', { label, text });
  const rules = [first, second].map(({ of, ruleSet }) => ruleSetText(of, ruleSet, words));
  return [
    ...(rules[0] === rules[1]
      ? [line(words.sentence('report.ruleSet'), rules[0] ?? '')]
      : [line(first.name, rules[0] ?? ''), line(second.name, rules[1] ?? '')]),
    ...[first, second].flatMap(({ name, note }) =>
      note === null ? [] : [line(`${name}, ${words.sentence('away.note')}`, `“${note}”`)],
    ),
  ];
}

/** At home of the mean, of recordings of the mean by day: of the others nothing was published. */
function sureText(
  first: SideOfTwo,
  second: SideOfTwo,
  compared: TwoSeries['compared'],
  words: Words,
): string | null {
  if (first.of !== second.of) return null;
  const of: PublishedApart = first.of === 'home' ? 'home' : 'awake';
  const difference = (of === 'home' ? compared.mean : compared.day)?.systolic.difference ?? null;
  if (difference === null) return null;
  const { low, high } = changeBetween(difference, of);
  const signed = (value: number) => signedText(value, words);
  const change = {
    change: signed(difference),
    low: signed(low),
    high: signed(high),
    holdsNone: low <= 0 && high >= 0,
  };
  const apart = APART_BY_THEMSELVES[of];
  return of === 'home'
    ? words.sentence('away.changeHome', { ...change, sd: apart.sd })
    : words.sentence('away.changeAwake', { ...change, least: signed(apart.low), most: signed(apart.high) });
}

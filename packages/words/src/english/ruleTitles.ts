import { SECTIONS, type SectionName } from '@evenfall/clinical';

/** The keys of the fields of a section, less what is no field. */
type KeyOf<Fields> = {
  [Key in keyof Fields]: [Exclude<Fields[Key], undefined>] extends [never] ? never : Key;
}[keyof Fields] &
  string;

/** Names a field of a protocol: `inflation/marginMmHg`. */
export type RulePlace = {
  [Section in SectionName]: `${Section}/${KeyOf<(typeof SECTIONS)[Section]['fields']>}`;
}[SectionName];

/** What each field of a protocol is for. English has it from the definition of the field itself. */
const rule = Object.fromEntries(
  Object.entries(SECTIONS).flatMap(([section, { fields }]) =>
    Object.entries(fields).map(([key, { meaning }]) => [`${section}/${key}`, meaning]),
  ),
) as Record<RulePlace, string>;

/** The fields of a protocol, their units, and the words that one of them may hold. */
export const ruleTitles = {
  rule,
  ruleUnit: {
    s: 's',
    h: 'h',
    '/min': '/min',
    '%': '%',
    mmHg: 'mmHg',
    'mmHg/s': 'mmHg/s',
    'mmHg/min': 'mmHg/min',
    months: 'months',
    weeks: 'weeks',
    days: 'days',
    minutes: 'minutes',
    'minutes from midnight': 'time of day',
    readings: 'readings',
    pairs: 'pairs',
    points: 'points',
    SD: 'SD',
  },
  perBeatWhen: {
    always: 'any pulse',
    'slow-or-irregular': 'a slow or irregular one',
    never: 'none',
  },
  gaugeReading: { nearest: 'the nearest', 'mark-above': 'the one above' },
  irregularAverage: { all: 'all', 'by-rule': 'those of the guideline' },
} as const;

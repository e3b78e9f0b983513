import { ADULT_SCHEME_IDS, AVERAGING_RULE_IDS } from '@evenfall/clinical';
import { MEASURED_BY } from '@evenfall/physiology';
import { COUNT_CLOCKS, CUFF_CHOICES, PLAN_FAULTS, type PlanProtocol, planProtocol } from '@evenfall/practice';
import type { SentenceKey, Words } from '@evenfall/words';

type PlanName = Extract<SentenceKey, `plan.${string}` | `debrief.fault-${string}`>;
type Choice = { readonly id: string; readonly says: (words: Words) => string };

/** A field of a way of measuring by its path: a number (`isFree`: or nothing) or one of a list. */
export type PlanField = {
  readonly path: string;
  readonly says: PlanName;
  readonly choices: readonly Choice[] | null;
  /** What stands for a blank, in words. */
  readonly blank: PlanName | null;
};

const number = (path: string, says: PlanName, blank: PlanName | null = null): PlanField => ({
  path,
  says,
  choices: null,
  blank,
});
const choice = (path: string, says: PlanName, choices: readonly Choice[]): PlanField => ({
  path,
  says,
  choices,
  blank: null,
});
const guideline = (id: string): Choice => ({ id, says: (words) => words.title('guideline', id) });
const rule = (id: string): Choice => ({ id, says: (words) => words.title('readings', id) });

/** What of a way of measuring can be changed on the page, in the order of the work; the rest is as the textbook has it. */
export const PLAN_FIELDS: readonly PlanField[] = [
  number('restMinutes', 'plan.restMinutes'),
  choice(
    'measuredBy',
    'plan.measuredBy',
    MEASURED_BY.map((id) => ({ id, says: (words) => words.sentence(`plan.by-${id}`) })),
  ),
  number('pulseWindowSeconds', 'plan.pulseWindowSeconds'),
  number('breathsWindowSeconds', 'plan.breathsWindowSeconds', 'plan.notCounted'),
  choice(
    'countClock',
    'plan.countClock',
    COUNT_CLOCKS.map((id) => ({ id, says: (words) => words.sentence(`plan.clock-${id}`) })),
  ),
  choice(
    'countFirst',
    'plan.countFirst',
    (['1', '0'] as const).map((id) => ({ id, says: (words) => words.sentence(`plan.calls-${id}`) })),
  ),
  choice(
    'cuff',
    'plan.cuff',
    CUFF_CHOICES.map((id) => ({
      id,
      says: (words) =>
        id === 'adult-for-all' ? words.sentence('plan.adult-for-all') : words.title('preset', id),
    })),
  ),
  choice('palpatesFirst', 'plan.palpatesFirst', [
    { id: 'true', says: (words) => words.sentence('plan.yes') },
    { id: 'false', says: (words) => words.sentence('plan.no') },
  ]),
  number('marginMmHg', 'plan.marginMmHg'),
  number('peakMmHg', 'plan.peakMmHg'),
  number('rateMmHgPerSecond', 'plan.rateMmHgPerSecond'),
  number('mostPerBeatMmHg', 'plan.mostPerBeatMmHg', 'plan.noSuchCare'),
  number('thresholdDb', 'plan.thresholdDb'),
  number('reactionSeconds', 'plan.reactionSeconds'),
  number('tenShare', 'plan.tenShare'),
  choice('rule', 'plan.rule', AVERAGING_RULE_IDS.map(rule)),
  number('readings', 'plan.readings', 'plan.asRule'),
  number('gapSeconds', 'plan.gapSeconds'),
  number('visits', 'plan.visits'),
  choice('guideline', 'plan.guideline', ADULT_SCHEME_IDS.map(guideline)),
  number('home/days', 'plan.home/days', 'plan.homeNone'),
  number('home/readingsPerDay', 'plan.home/readingsPerDay', 'plan.homeNone'),
  number('home/droppedDays', 'plan.home/droppedDays', 'plan.homeNone'),
];

/** How often each thing is done wrong: a share of the observers, blank where nobody does it. */
export const FAULT_FIELDS: readonly PlanField[] = PLAN_FAULTS.map((code) =>
  number(`faults/${code}`, `debrief.fault-${code}`, 'plan.nobody'),
);
export const ALL_FIELDS = [...PLAN_FIELDS, ...FAULT_FIELDS];

export type PlanGroup = { readonly says: PlanName; readonly fields: readonly PlanField[] };

const group = (says: PlanName, first: string, last: string): PlanGroup => {
  const at = (path: string) => PLAN_FIELDS.findIndex((one) => one.path === path);
  return { says, fields: PLAN_FIELDS.slice(at(first), at(last) + 1) };
};

/** Every field in the group in which it stands on the page, in the order of the work. */
export const PLAN_GROUPS: readonly PlanGroup[] = [
  group('plan.groupBefore', 'restMinutes', 'measuredBy'),
  group('plan.groupCounting', 'pulseWindowSeconds', 'countFirst'),
  group('plan.groupCuff', 'cuff', 'peakMmHg'),
  group('plan.groupReading', 'rateMmHgPerSecond', 'tenShare'),
  group('plan.groupVisit', 'rule', 'guideline'),
  group('plan.groupHome', 'home/days', 'home/droppedDays'),
  { says: 'plan.faults', fields: FAULT_FIELDS },
];

/** Whether both ways have the same in this field, as they stand in the form. */
export function isAlike(
  { path }: PlanField,
  first: (path: string) => string,
  second: (path: string) => string,
) {
  return first(path).trim() === second(path).trim();
}
const NESTED = ['home', 'faults'] as const;

/** A way of measuring as the form shows it. */
export function fieldsOf(protocol: PlanProtocol): Readonly<Record<string, string>> {
  const { home, faults, ...rest } = protocol;
  const flat: Readonly<Record<string, unknown>> = {
    ...rest,
    'home/days': home?.days ?? null,
    'home/readingsPerDay': home?.readingsPerDay ?? null,
    'home/droppedDays': home?.droppedDays ?? null,
    ...Object.fromEntries(PLAN_FAULTS.map((code) => [`faults/${code}`, faults[code] ?? null])),
  };
  return Object.fromEntries(
    ALL_FIELDS.map(({ path }) => [path, flat[path] == null ? '' : String(flat[path])]),
  );
}

/** The textbook, and what a busy room often makes of it. Decision of this project: an example to begin from. */
export const BEGINNINGS = {
  first: planProtocol({ breathsWindowSeconds: 60 }),
  second: planProtocol({
    pulseWindowSeconds: 15,
    breathsWindowSeconds: 15,
    readings: 1,
    restMinutes: 1,
    palpatesFirst: false,
    rateMmHgPerSecond: 5,
    tenShare: 0.3,
  }),
} as const;

const NUMBER = /^[-+]?\d+([.,]\d+)?$/;

/** What was typed as JSON, as a file of the command line carries it. A blank is left out, what is no number stays as typed. */
export function planJson(text: (path: string) => string): Record<string, unknown> {
  const json: Record<string, unknown> = {};
  const nested: Record<(typeof NESTED)[number], Record<string, unknown>> = { home: {}, faults: {} };
  for (const { path, choices } of ALL_FIELDS) {
    const typed = text(path).trim();
    if (typed === '') continue;
    const value =
      path === 'palpatesFirst'
        ? typed === 'true'
        : (choices === null || path === 'countFirst') && NUMBER.test(typed)
          ? Number(typed.replace(',', '.'))
          : typed;
    const inside = NESTED.find((name) => path.startsWith(`${name}/`));
    if (inside === undefined) json[path] = value;
    else nested[inside][path.slice(inside.length + 1)] = value;
  }
  for (const name of NESTED) if (Object.keys(nested[name]).length > 0) json[name] = nested[name];
  return json;
}

/** In what two ways of measuring differ, field by field in words, as they stand in the form. */
export function differences(
  first: (path: string) => string,
  second: (path: string) => string,
  words: Words,
): string[] {
  return ALL_FIELDS.filter((field) => !isAlike(field, first, second)).map((field) => {
    const said = (typed: string) => {
      const choice = field.choices?.find(({ id }) => id === typed);
      if (choice !== undefined) return choice.says(words);
      return typed.trim() === '' && field.blank !== null
        ? words.sentence(field.blank as 'plan.asRule')
        : typed.trim();
    };
    return words.sentence('plan.differIn', {
      field: words.sentence(field.says as 'plan.rule'),
      first: said(first(field.path)),
      second: said(second(field.path)),
    });
  });
}

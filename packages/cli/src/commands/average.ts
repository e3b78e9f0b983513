import {
  AAP_2017,
  ADULT_SCHEMES,
  AVERAGE_RULE,
  AVERAGING_ORIGINS,
  AVERAGING_RULE_IDS,
  AVERAGING_RULES,
  type AveragingRuleId,
  actFirst,
  actNowRules,
  averageReadings,
  type Flag,
  limitsOf,
  listPresets,
  PREGNANCY_SCHEME,
  type Presets,
  type Protocol,
  presetProtocol,
  type Reading,
  type ReadingsAverage,
  type ReadingsCircumstances,
  readingsRules,
  severeLimits,
  shownPressure,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item } from '../command.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { typedReadings } from './averageReadings.js';

const OPTIONS: readonly Option[] = [
  {
    name: 'rule',
    kind: 'value',
    means: 'options.averageRule',
    hint: 'ID',
    choices: AVERAGING_RULE_IDS,
    required: true,
  },
  { name: 'irregular', kind: 'switch', means: 'options.irregular' },
  { name: 'raised-from', kind: 'value', means: 'options.raisedFrom', hint: 'S/D' },
];

type Asked = {
  readonly readings: readonly Reading[];
  readonly rule: AveragingRuleId;
  readonly isIrregular: boolean;
  readonly raisedFrom: ReadingsCircumstances['raisedFrom'];
};

/** `evenfall average`: what a guideline makes of the readings of one arm, in the order in which they were taken. */
export const average = command<Asked>({
  name: 'average',
  summary: 'commands.average',
  options: OPTIONS,
  operands: { hint: 'PRESSURE...', least: 1, most: Number.POSITIVE_INFINITY, expected: 'pressure' },
  list: ruleItems,

  parse(given, operands) {
    const typed = typedReadings(operands, given.text('raised-from'), given.text('rule'));
    return typed.ok ? { ok: true, value: { ...typed.value, isIrregular: given.isOn('irregular') } } : typed;
  },

  async run({ readings, rule, isIrregular, raisedFrom }, { words, version }) {
    const protocol = protocolOf(rule);
    const severe = severeLimits(actNowRules(protocol));
    const known = { irregular: isIrregular ? true : null, raisedFrom, severe };
    const average = averageReadings(readings, known, readingsRules(protocol));
    const found = { ...average, flags: [...firstOf(readings, rule), ...average.flags] };
    const json = {
      systolic: found.systolic,
      diastolic: found.diastolic,
      used: found.used,
      needs: found.needs.map(words.flagged),
      flags: found.flags.map(words.flagged),
      why: found.why.map(words.flagged),
      guideline: rule,
      irregular: isIrregular,
      raisedFrom,
      computedBy: computedBy(version, AVERAGE_RULE, protocol, 'readings'),
    };
    return { kind: 'one', json, lines: linesOf(found, rule, words) };
  },
});

/** The guideline's own rules of averaging, and its own limits of a severe pressure where it has some. */
function protocolOf(rule: AveragingRuleId): Protocol {
  const hasSevere = listPresets().some(({ section, id }) => section === 'actNow' && id === rule);
  const chosen: Partial<Presets> = { readings: rule, ...(hasSevere ? { actNow: rule } : {}) };
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(`The rule ${rule} is listed and cannot be read`);
  return found.value;
}

/** Every guideline, in the order of the handbook. */
function ruleItems(words: Words): Item[] {
  return AVERAGING_RULES.map(({ id }) => ({
    id,
    title: words.title('readings', id),
    source: AVERAGING_ORIGINS[id].source,
    status: AVERAGING_ORIGINS[id].status,
    typed: `--rule ${id}`,
  }));
}

/** What comes before the average: the first reading that may be an emergency or is very low. A child has other limits. */
function firstOf(readings: readonly Reading[], rule: AveragingRuleId): Flag[] {
  if (rule === AAP_2017.id) return [];
  const flags: readonly Flag[] = readings.flatMap((one) => actFirst(one, false));
  return flags.filter(({ code }, at) => flags.findIndex((one) => one.code === code) === at);
}

type Found = Omit<ReadingsAverage, 'flags'> & { readonly flags: readonly Flag[] };

function linesOf(found: Found, rule: AveragingRuleId, words: Words): string[] {
  return columns([
    [words.sentence('average.average'), averageOf(found, words)],
    [words.sentence('average.rule'), words.title('readings', rule)],
    ...found.needs.map((flag) => [words.sentence('commandLine.next'), words.detail(flag)]),
    ...found.flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
    ...found.why.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
  ]);
}

/** Every limit of a category: which scheme a mean is held against is not known here. */
const LIMITS = [...ADULT_SCHEMES, PREGNANCY_SCHEME, AAP_2017].map((scheme) => ({
  systolic: limitsOf(scheme, 'systolic'),
  diastolic: limitsOf(scheme, 'diastolic'),
}));

/** Whole, with decimals only where the whole number would stand on the other side of a limit of any scheme. */
function averageOf({ systolic, diastolic, used }: Found, words: Words): string {
  if (systolic === null || diastolic === null) return words.sentence('average.none');
  const shown = (part: 'systolic' | 'diastolic', mmHg: number) =>
    shownPressure(
      mmHg,
      LIMITS.flatMap((limits) => limits[part]),
    );
  const pressure = `${shown('systolic', systolic)}/${shown('diastolic', diastolic)}`;
  const readings = words.say.allOf(used.map((index) => words.say.number(index)));
  return words.sentence('average.of', { pressure, readings, count: used.length });
}

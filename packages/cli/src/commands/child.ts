import {
  CHILD_RULE,
  type ChildQuestion,
  type ChildResult,
  type Component,
  childResult,
  FOURTH_REPORT,
  FOURTH_REPORT_ID,
  parseChildQuestion,
  SEXES,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { categoryRows } from './categoryRows.js';

const OPTIONS: readonly Option[] = [
  { name: 'sex', kind: 'value', means: 'options.sex', choices: SEXES, required: true },
  {
    name: 'age-months',
    kind: 'value',
    means: 'options.ageMonths',
    hint: 'MONTHS',
    required: true,
    field: '/ageMonths',
  },
  {
    name: 'height-cm',
    kind: 'value',
    means: 'options.heightCm',
    hint: 'CM',
    required: true,
    field: '/heightCm',
  },
  { name: 'systolic', kind: 'value', means: 'options.systolic', hint: 'MMHG', required: true },
  { name: 'diastolic', kind: 'value', means: 'options.diastolic', hint: 'MMHG' },
  { name: 'guideline', kind: 'value', means: 'options.childGuideline', choices: [FOURTH_REPORT_ID] },
];

/** `evenfall child`: where a child's pressure stands among children of that sex, age and height. */
export const child = command<ChildQuestion>({
  name: 'child',
  summary: 'commands.child',
  options: OPTIONS,
  operands: NO_OPERANDS,
  list: schemeItems,

  parse: (given) =>
    parseChildQuestion({
      sex: given.text('sex'),
      ageMonths: given.text('age-months'),
      heightCm: given.text('height-cm'),
      systolic: given.text('systolic'),
      diastolic: given.text('diastolic'),
    }),

  async run(question, { words, version }) {
    const found = childResult(question);
    const json = {
      heightZ: found.heightZ,
      systolic: found.systolic,
      diastolic: found.diastolic,
      limits: found.limits,
      guideline: found.guideline,
      category: found.category,
      systolicCategory: found.systolicCategory,
      diastolicCategory: found.diastolicCategory,
      isolated: found.isolated,
      atLeast: found.atLeast,
      level: found.level,
      shown: found.shown,
      lowSystolicMmHg: found.lowSystolicMmHg,
      flags: found.flags.map(words.flagged),
      why: found.why.map(words.flagged),
      computedBy: computedBy(version, CHILD_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(found, words) };
  },
});

function schemeItems(words: Words): Item[] {
  const { source, sure: status } = FOURTH_REPORT;
  const title = words.title('scheme', FOURTH_REPORT_ID);
  return [{ id: FOURTH_REPORT_ID, title, source, status, typed: `--guideline ${FOURTH_REPORT_ID}` }];
}

function linesOf(found: ChildResult, words: Words): string[] {
  const { limits, lowSystolicMmHg, heightZ } = found;
  const rows = [
    ...categoryRows(found, words, standings(found, words)),
    ...found.flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
    [words.sentence('category.height'), words.sentence('category.fromMedian', { z: heightZ })],
    [words.sentence('category.limitsOf'), words.sentence('category.systolicLimits', limits.systolic)],
    ['', words.sentence('category.diastolicLimits', limits.diastolic)],
    ['', words.sentence('category.lowUnder', { mmHg: lowSystolicMmHg })],
    [words.sentence('category.scheme'), words.title('scheme', found.guideline)],
    ...found.why.map((flag) => ['', words.detail(flag)]),
  ];
  const after = [words.sentence('category.fourthReport'), words.sentence('category.moreThanOnce')];
  return [...columns(rows), ...after];
}

function standings({ systolic, diastolic }: ChildResult, words: Words): Partial<Record<Component, string>> {
  return {
    ...(systolic === null ? {} : { systolic: words.sentence('category.centile', systolic) }),
    ...(diastolic === null ? {} : { diastolic: words.sentence('category.centile', diastolic) }),
  };
}

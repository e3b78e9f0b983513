import {
  AAP_2017,
  ADULT_SCHEMES,
  CATEGORY_RULE,
  type Category,
  type CategoryQuestion,
  type CategoryScheme,
  categoryOf,
  GUIDELINE_IDS,
  PREGNANCY_SCHEME,
  parseCategoryQuestion,
  SEXES,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { categoryRows } from './categoryRows.js';

const OPTIONS: readonly Option[] = [
  { name: 'systolic', kind: 'value', means: 'options.systolic', hint: 'MMHG', required: true },
  { name: 'diastolic', kind: 'value', means: 'options.diastolic', hint: 'MMHG' },
  { name: 'guideline', kind: 'value', means: 'options.guideline', hint: 'ID', choices: GUIDELINE_IDS },
  { name: 'age', kind: 'value', means: 'options.age', hint: 'YEARS', field: '/ageYears' },
  { name: 'sex', kind: 'value', means: 'options.sex', choices: SEXES },
  { name: 'pregnant', kind: 'switch', means: 'options.pregnant' },
];

/** `evenfall category`: the category of a guideline in which a pressure falls. */
export const category = command<CategoryQuestion>({
  name: 'category',
  summary: 'commands.category',
  options: OPTIONS,
  operands: NO_OPERANDS,
  list: schemeItems,

  parse: (given) =>
    parseCategoryQuestion({
      systolic: given.text('systolic'),
      diastolic: given.text('diastolic'),
      guideline: given.text('guideline'),
      ageYears: given.text('age'),
      sex: given.text('sex'),
      isPregnant: given.isOn('pregnant'),
    }),

  async run(question, { words, version }) {
    const { flags, why, ...found } = categoryOf(question);
    const json = {
      guideline: found.guideline,
      category: found.category,
      systolicCategory: found.systolicCategory,
      diastolicCategory: found.diastolicCategory,
      isolated: found.isolated,
      atLeast: found.atLeast,
      level: found.level,
      screening: found.screening,
      shown: found.shown,
      flags: flags.map(words.flagged),
      why: why.map(words.flagged),
      pregnant: question.isPregnant,
      computedBy: computedBy(version, CATEGORY_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf({ ...found, flags, why }, words) };
  },
});

/** Every scheme, in the order of the handbook. */
function schemeItems(words: Words): Item[] {
  const schemes: readonly CategoryScheme[] = [...ADULT_SCHEMES, PREGNANCY_SCHEME, AAP_2017];
  return schemes.map(({ id, source, status }) => ({
    id,
    title: words.title('scheme', id),
    source,
    status,
    typed: `--guideline ${id}${id === AAP_2017.id ? ' --age 13' : ''}`,
  }));
}

function linesOf(found: Category, words: Words): string[] {
  const { screening } = found;
  const screened =
    screening === null ? [] : [[words.sentence('category.screening'), words.title('screening', screening)]];
  return [
    ...columns([
      ...categoryRows(found, words),
      ...screened,
      [words.sentence('category.scheme'), words.title('scheme', found.guideline)],
      ...found.flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
      ...found.why.map((flag) => ['', words.detail(flag)]),
    ]),
    words.sentence('category.moreThanOnce'),
  ];
}

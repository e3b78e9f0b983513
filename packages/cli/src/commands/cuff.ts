import {
  CUFF_RULE,
  CUFF_SCHEME_IDS,
  CUFF_SCHEMES,
  type CuffChoice,
  type CuffQuestion,
  cuffChoice,
  parseCuffQuestion,
  smallestBladderCm,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';

/** `evenfall cuff`: which cuff an arm needs, and what the one at hand does instead. */
export const cuff = command<CuffQuestion>({
  name: 'cuff',
  summary: 'commands.cuff',
  options: [
    { name: 'arm', kind: 'value', means: 'options.arm', hint: 'CM', required: true, field: '/armCm' },
    { name: 'scheme', kind: 'value', means: 'options.cuffScheme', choices: CUFF_SCHEME_IDS },
    { name: 'at-hand', kind: 'value', means: 'options.atHand', hint: 'ID', field: '/atHand' },
  ],
  operands: NO_OPERANDS,
  list: schemeItems,

  parse: (given) =>
    parseCuffQuestion({
      armCm: given.text('arm'),
      scheme: given.text('scheme'),
      atHand: given.text('at-hand'),
    }),

  async run(question, { words, version }) {
    const choice = cuffChoice(question);
    const json = {
      scheme: choice.scheme,
      cuff: choice.cuff,
      bladderCm: choice.bladderCm,
      biasMmHg: choice.biasMmHg,
      biasRangeMmHg: choice.biasRangeMmHg,
      biasSource: choice.biasSource,
      smallestBladderCm: smallestBladderCm(question.armCm),
      atHand: question.atHand,
      status: choice.status,
      flags: choice.flags.map(words.flagged),
      why: choice.why.map(words.flagged),
      computedBy: computedBy(version, CUFF_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(question, choice, words) };
  },
});

/** Each scheme and below it its cuffs from the smallest, in the order of bedside handbook 3.2. */
function schemeItems(words: Words): Item[] {
  return CUFF_SCHEMES.flatMap(({ id, source, status, cuffs }) => [
    { id, title: words.title('preset', id), source, status, typed: `--scheme ${id}` },
    ...cuffs.map((one) => ({
      id: `${id}-${one.id}`,
      title: `${words.title('cuff', one.id)}, ${words.sentence('run.bladder', one.bladderCm)}`,
      source,
      status,
      typed: `--scheme ${id} --at-hand ${one.id}`,
    })),
  ]);
}

function linesOf({ armCm }: CuffQuestion, choice: CuffChoice, words: Words): string[] {
  const { cuff: found, bladderCm } = choice;
  const name = found === null ? words.sentence('run.noCuff') : words.title('cuff', found);
  const bladder = bladderCm === null ? [] : [words.sentence('run.bladder', bladderCm)];
  const smallest = words.sentence('run.smallestBladder', smallestBladderCm(armCm));
  return columns([
    [words.sentence('run.cuff'), [name, ...bladder].join(', ')],
    ['', smallest],
    [words.sentence('run.scheme'), words.title('preset', choice.scheme)],
    ...biasRows(choice, words),
    ...choice.flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
    ...choice.why.map((flag) => ['', words.detail(flag)]),
  ]);
}

function biasRows({ biasMmHg, biasRangeMmHg }: CuffChoice, words: Words): string[][] {
  const heading = words.sentence('run.bias');
  const rows: string[][] = [];
  if (biasMmHg !== null) rows.push([heading, words.sentence('run.biasOf', biasMmHg)]);
  if (biasRangeMmHg !== null) {
    const [systolicLow, systolicHigh] = biasRangeMmHg.systolic;
    const [diastolicLow, diastolicHigh] = biasRangeMmHg.diastolic;
    const span = { systolicLow, systolicHigh, diastolicLow, diastolicHigh };
    rows.push([biasMmHg === null ? heading : '', words.sentence('run.biasSpan', span)]);
  }
  return rows;
}

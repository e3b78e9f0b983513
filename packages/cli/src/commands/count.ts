import {
  type Circumstances,
  COUNT_RULE,
  type Count,
  type CountResult,
  countResult,
  countRules,
  type Protocol,
  parseCount,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { CIRCUMSTANCE_OPTIONS, parseCircumstances } from './circumstances.js';
import { PRESET_OPTION, presetItems, protocolOf } from './presets.js';

const OPTIONS: readonly Option[] = [
  { name: 'n', kind: 'value', means: 'options.n', hint: 'NUMBER', required: true },
  {
    name: 'window',
    kind: 'value',
    means: 'options.window',
    hint: 'SECONDS',
    required: true,
    field: '/windowSeconds',
  },
  { name: 'clock', kind: 'value', means: 'options.clock', choices: ['beat', 'any'] },
  { name: 'first', kind: 'value', means: 'options.first', choices: ['0', '1'] },
  { name: 'of', kind: 'value', means: 'options.of', choices: ['pulse', 'breaths'] },
  ...CIRCUMSTANCE_OPTIONS,
  PRESET_OPTION,
];

type Asked = {
  readonly counted: Count;
  readonly circumstances: Circumstances;
  /** Null when no preset was chosen: then the conventions hold. */
  readonly protocol: Protocol | null;
};

/** `evenfall count`: so many beats or breaths in so many seconds. */
export const count = command<Asked>({
  name: 'count',
  summary: 'commands.count',
  options: OPTIONS,
  operands: NO_OPERANDS,
  list: (words) => [...presetItems(words), ...startItems(words)],

  parse(given) {
    const protocol = protocolOf(given.text('preset'));
    const typed = {
      n: given.text('n'),
      windowSeconds: given.text('window'),
      clock: given.text('clock'),
      first: given.text('first'),
      of: given.text('of'),
    };
    const counted = parseCount(typed, countRules(protocol));
    const circumstances = parseCircumstances(given);
    if (counted.ok && circumstances.ok) {
      return { ok: true, value: { counted: counted.value, circumstances: circumstances.value, protocol } };
    }
    return { ok: false, refusals: [counted, circumstances].flatMap((one) => (one.ok ? [] : one.refusals)) };
  },

  async run({ counted, circumstances, protocol }, { words, version }) {
    const result = countResult(counted, circumstances, countRules(protocol));
    const json = {
      perMinute: result.perMinute,
      stepPerMinute: result.stepPerMinute,
      lowPerMinute: result.lowPerMinute,
      highPerMinute: result.highPerMinute,
      lowIncluded: result.lowIncluded,
      highIncluded: result.highIncluded,
      flags: result.flags.map(words.flagged),
      nextWindowSeconds: result.nextWindowSeconds,
      why: result.why.map(words.flagged),
      firstSet: circumstances.firstOnPerson,
      heartRateDrug: circumstances.heartRateDrug,
      computedBy: computedBy(version, COUNT_RULE, protocol),
    };
    return { kind: 'one', json, lines: linesOf(counted, result, words) };
  },
});

/** The four ways to start a count, in the order of bedside handbook 1.4. */
function startItems(words: Words): Item[] {
  return (['beat-0', 'beat-1', 'any-1', 'any-0'] as const).map((id) => ({
    id,
    title: words.title('start', id),
    source: 'bedside handbook 1.4',
    status: 'derived',
    typed: `--clock ${id.slice(0, -2)} --first ${id.slice(-1)}`,
  }));
}

function linesOf(counted: Count, result: CountResult, words: Words): string[] {
  const from = { n: counted.n, seconds: counted.windowSeconds };
  const counts = counted.of === 'pulse' ? 'commandLine.beatsIn' : 'commandLine.breathsIn';
  const rate = `${words.say.rate(result.perMinute)} ${words.sentence('app.perMinute')}`;
  const rows = [
    [rate, `${rangeOf(result, words)}, ${words.sentence(counts, from)}`],
    ['', words.sentence('commandLine.step', { perMinute: result.stepPerMinute })],
    ...result.flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
    ...nextOf(result, words),
    ...words.together(result.why).map(({ text }) => ['', text]),
  ];
  return columns(rows);
}

function nextOf({ nextWindowSeconds: seconds }: CountResult, words: Words): string[][] {
  if (seconds === null) return [];
  return [[words.sentence('commandLine.next'), words.sentence('commandLine.countFor', { seconds })]];
}

/** The likely range, saying whether its ends are in it. */
function rangeOf(result: CountResult, words: Words): string {
  const ends = { low: result.lowPerMinute, high: result.highPerMinute };
  if (result.lowIncluded) {
    return words.sentence(result.highIncluded ? 'commandLine.fromTo' : 'commandLine.fromUnder', ends);
  }
  return words.sentence(result.highIncluded ? 'commandLine.overUpTo' : 'commandLine.between', ends);
}

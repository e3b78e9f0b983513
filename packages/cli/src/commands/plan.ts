import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import {
  type Apart,
  type Plan,
  type PlanProtocol,
  type PlanResult,
  type ProtocolResult,
  parsePlanProtocol,
  type SideResult,
} from '@evenfall/practice';
import type { Words } from '@evenfall/words';
import { type Json, refused } from '../answer.js';
import { type Context, command, NO_OPERANDS } from '../command.js';
import { jsonOf } from '../input/jsonOf.js';
import { readInput } from '../input/readInput.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { planned } from './planned.js';
import { typedSeed, wholeOption } from './typedSeed.js';

/** Other people, or another model of what happens to them, gets another rule. */
const PLAN_RULE = 'plan-4';

const OPTIONS: readonly Option[] = [
  { name: 'protocol', kind: 'value', means: 'options.planProtocol', hint: 'FILE', required: true },
  { name: 'against', kind: 'value', means: 'options.planAgainst', hint: 'FILE' },
  { name: 'people', kind: 'value', means: 'options.people', hint: 'NUMBER' },
  { name: 'seed', kind: 'value', means: 'options.seed', hint: 'NUMBER' },
  { name: 'workers', kind: 'value', means: 'options.workers', hint: 'NUMBER' },
];
const USUAL_PEOPLE = '10000';
const PEOPLE = { minimum: 2, maximum: 10_000_000 };
const WORKERS = { minimum: 1, maximum: 256 };
/** The worker as it is built; absent where the program runs from its sources. */
const WORKER = fileURLToPath(new URL('./planWorker.js', import.meta.url));

type Asked = {
  readonly protocolFile: string;
  readonly againstFile: string | null;
  readonly people: number;
  readonly seed: number;
  readonly workers: number;
};

/** `evenfall plan`: what a protocol of measuring gets wrong, and beside another on the same people. */
export const plan = command<Asked>({
  name: 'plan',
  summary: 'commands.plan',
  options: OPTIONS,
  operands: NO_OPERANDS,

  parse(given) {
    const people = wholeOption(given, 'people', USUAL_PEOPLE, PEOPLE);
    const workers = wholeOption(given, 'workers', String(availableParallelism()), WORKERS);
    const seed = typedSeed(given);
    const refusals: Refusal[] = [people, seed, workers].flatMap((one) => (one.ok ? [] : one.refusals));
    const protocolFile = given.text('protocol');
    if (protocolFile === null || protocolFile === '')
      refusals.push(refusal('/protocol', 'missing', 'readable-file', protocolFile));
    if (!people.ok || !seed.ok || !workers.ok || refusals.length > 0 || protocolFile === null)
      return { ok: false, refusals };
    return {
      ok: true,
      value: {
        protocolFile,
        againstFile: given.text('against'),
        people: people.value,
        seed: seed.value,
        workers: workers.value,
      },
    };
  },

  async run({ protocolFile, againstFile, people, seed, workers }, context) {
    const { words, version, interrupted, stderr } = context;
    const first = await protocolIn(protocolFile, context);
    const second = againstFile === null ? null : await protocolIn(againstFile, context);
    const problems = [
      ...(first.ok ? [] : first.refusals.map((one) => words.problem(one, { file: protocolFile }))),
      ...(second === null || second.ok
        ? []
        : second.refusals.map((one) => words.problem(one, { file: againstFile }))),
    ];
    if (!first.ok || (second !== null && !second.ok)) return refused(problems);
    const asked: Plan = { protocol: first.value, against: second?.value ?? null, people, seed };
    const workerFile = existsSync(WORKER) ? WORKER : null;
    const tell = (stderr as { isTTY?: boolean }).isTTY === true;
    const result = await planned(asked, workerFile, workers, interrupted, (done) => {
      if (tell) stderr.write(`\r${words.sentence('commandLine.planned', { percent: 100 * done })}`);
    });
    if (tell) stderr.write('\r\u001b[K');
    const json: Json = {
      ...planJson(result.protocol),
      against: result.against === null ? null : planJson(result.against),
      paired: result.paired,
      protocol: asked.protocol,
      againstProtocol: asked.against,
      seed,
      computedBy: computedBy(version, PLAN_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(result, words) };
  },
});

async function protocolIn(file: string, { stdin }: Context): Promise<Parsed<PlanProtocol>> {
  const text = await readInput(file, stdin);
  const json = text.ok ? jsonOf(text.value) : text;
  return json.ok ? parsePlanProtocol(json.value) : json;
}

function planJson(result: ProtocolResult): Json {
  const { systolic, diastolic, standardErrors } = result;
  const both = (of: keyof SideResult) => ({ systolic: systolic[of], diastolic: diastolic[of] });
  const errors = (of: keyof SideResult) => ({
    systolic: standardErrors.systolic[of],
    diastolic: standardErrors.diastolic[of],
  });
  return {
    bias: both('bias'),
    sd: both('sd'),
    within5: both('within5'),
    within10: both('within10'),
    within15: both('within15'),
    misclassified: result.misclassified,
    standardErrors: {
      bias: errors('bias'),
      sd: errors('sd'),
      within5: errors('within5'),
      within10: errors('within10'),
      within15: errors('within15'),
      misclassified: standardErrors.misclassified,
      minutes: standardErrors.minutes,
    },
    minutes: result.minutes,
    people: result.people,
    without: result.without,
    readings: result.readings,
    counts: result.counts,
  };
}

function linesOf({ protocol, against, paired }: PlanResult, words: Words): string[] {
  const rows = [
    [words.sentence('commandLine.simulated'), words.sentence('commandLine.planPeople', protocol)],
    ...protocolRows(protocol, words.sentence('commandLine.planFirst'), words),
    ...(against === null ? [] : protocolRows(against, words.sentence('commandLine.planSecond'), words)),
  ];
  if (paired === null) return columns(rows);
  const apart = ({ mean, standardError }: Apart) => ({ mean, standardError });
  return columns([
    ...rows,
    [
      words.sentence('commandLine.planApart'),
      words.sentence('commandLine.planApartSystolic', apart(paired.systolic.bias)),
    ],
    ['', words.sentence('commandLine.planApartDiastolic', apart(paired.diastolic.bias))],
    ['', words.sentence('commandLine.planApartMinutes', apart(paired.minutes))],
    ['', words.sentence('commandLine.planApartWrong', paired.misclassified)],
  ]);
}

function protocolRows(result: ProtocolResult, name: string, words: Words): string[][] {
  const rows: string[][] = [];
  for (const side of ['systolic', 'diastolic'] as const) {
    const { bias, sd, within5, within10, within15 } = result[side];
    const error = result.standardErrors[side].bias;
    if (bias === null || sd === null || error === null) continue;
    const figures = { bias, error, sd };
    rows.push([
      rows.length === 0 ? name : '',
      `${words.sentence(`run.${side}`)}: ${words.sentence('commandLine.planSide', figures)}`,
    ]);
    rows.push([
      '',
      words.sentence('commandLine.planWithin', {
        within5: within5 ?? 0,
        within10: within10 ?? 0,
        within15: within15 ?? 0,
      }),
    ]);
  }
  const { up, down } = result.misclassified;
  if (up !== null && down !== null) rows.push(['', words.sentence('commandLine.planWrong', { up, down })]);
  for (const of of ['pulse', 'breaths'] as const) {
    const counts = result.counts[of];
    if (counts === null || counts.bias === null || counts.sd === null || counts.within4 === null) continue;
    const { bias, sd, within4, standardErrors } = counts;
    const figures = { pulse: of === 'pulse', bias, sd, within4, error: standardErrors.bias ?? 0 };
    rows.push(['', words.sentence('commandLine.planCount', figures)]);
  }
  if (result.without > 0) rows.push(['', words.sentence('commandLine.planWithout', result)]);
  rows.push(['', words.sentence('commandLine.planMinutes', result)]);
  return rows;
}

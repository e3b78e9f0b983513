import type { Refusal } from '@evenfall/clinical';
import {
  bladderFor,
  type Circumstances,
  type Instrument,
  MODEL,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';
import {
  debrief,
  demonstrate,
  EXERCISE_SCHEMA,
  type Exercise,
  GOOD_OBSERVER,
  LEDGER_PARTS,
  NO_EVIDENCE,
  NOTHING_ENTERED,
  parseActions,
  replay,
  WORTH_TELLING_MMHG,
  withReading,
  wrapsWhileUp,
} from '@evenfall/practice';
import type { Words } from '@evenfall/words';
import { type Answer, type Json, refused } from '../answer.js';
import { type Context, command } from '../command.js';
import { jsonOf } from '../input/jsonOf.js';
import { readInput } from '../input/readInput.js';
import type { Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { namesFile, reportItems, scenarioItems, scenarioNamed } from './scenarioNamed.js';
import { beatsOfVisit } from './simulatedBeats.js';
import { typedSeed } from './typedSeed.js';

/** Another visit of the same seed and hands gets another rule. */
const SIMULATE_RULE = 'simulate-2';

const OPTIONS: readonly Option[] = [
  { name: 'seed', kind: 'value', means: 'options.seed', hint: 'NUMBER' },
  { name: 'actions', kind: 'value', means: 'options.actions', hint: 'FILE' },
];

type Asked = { readonly named: string; readonly seed: number; readonly actionsFile: string | null };

/** `evenfall simulate`: a visit to a simulated person, what was true in it and what a good observer reads of it. */
export const simulate = command<Asked>({
  name: 'simulate',
  summary: 'commands.simulate',
  options: OPTIONS,
  operands: { hint: 'SCENARIO', least: 1, most: 1, expected: 'a-scenario' },
  list: (words) => scenarioItems(words, 'evenfall simulate'),

  parse(given, [named = '']) {
    const seed = typedSeed(given);
    if (!seed.ok) return seed;
    return { ok: true, value: { named, seed: seed.value, actionsFile: given.text('actions') } };
  },

  async run({ named, seed, actionsFile }, context) {
    const scenario = await scenarioNamed(named, context.stdin);
    if (!scenario.ok) return refusedIn(namesFile(named) ? named : null, scenario.refusals, context);
    if (actionsFile === null) return answerOf(shownBy(scenario.value, seed), context);
    const text = await readInput(actionsFile, context.stdin);
    const json = text.ok ? jsonOf(text.value) : text;
    const read = json.ok ? parseActions(json.value) : json;
    if (!read.ok) return refusedIn(actionsFile, read.refusals, context);
    const exercise: Exercise = { ...blankOf(scenario.value, seed), ...read.value };
    const impossible = wrapsWhileUp(exercise);
    if (impossible.length > 0) return refusedIn(actionsFile, impossible, context);
    return answerOf(withReading(exercise, GOOD_OBSERVER, null), context);
  },
});

function refusedIn(file: string | null, refusals: readonly Refusal[], { words }: Context): Answer {
  return refused(refusals.map((one) => words.problem(one, { file })));
}

/** The textbook's visit, with the gauge and hose that come with the person. */
function visitOf(scenario: Scenario): { circumstances: Circumstances; instrument: Instrument } {
  const instrument = {
    ...SOUND_INSTRUMENT,
    ...scenario.instrument,
    bladder: bladderFor(scenario.armCm),
  };
  return { circumstances: PROPER, instrument };
}

function shownBy(scenario: Scenario, seed: number): Exercise {
  const { circumstances, instrument } = visitOf(scenario);
  return demonstrate(GOOD_OBSERVER, scenario, seed, circumstances, instrument);
}

function blankOf(scenario: Scenario, seed: number): Exercise {
  return {
    schema: EXERCISE_SCHEMA,
    model: MODEL,
    scenario,
    seed,
    ...visitOf(scenario),
    actions: [],
    seconds: 0,
    earlier: [],
    evidence: NO_EVIDENCE,
    entered: NOTHING_ENTERED,
  };
}

function answerOf(exercise: Exercise, { words, version }: Context): Answer {
  const found = debrief(exercise);
  const played = replay(exercise);
  const { reading, evidence } = { reading: found.reading, evidence: exercise.evidence };
  const json: Json = {
    truth: { ...found.truth, reference: found.reference },
    beats: beatsOfVisit(played, exercise),
    sounds: found.sounds.map(({ atSeconds, cuffMmHg, phase, levelDb, isAudible }) => ({
      atSeconds,
      cuffMmHg,
      phase,
      loudness: levelDb,
      isAudible,
    })),
    needle: { perSecond: found.tracePerSecond, mmHg: [...found.needleMmHg] },
    reading:
      reading === null
        ? null
        : {
            systolic: reading.systolic,
            muffled: reading.muffled,
            diastolic: reading.diastolic,
            diastolicUsed: reading.diastolicUsed,
            systolicRange: reading.systolicRange,
            diastolicRange: reading.diastolicRange,
            pulsePerMinute: evidence.run?.run.pulsePerMinute ?? null,
            flags: reading.flags.map(words.flagged),
            why: reading.why.map(words.flagged),
          },
    ledger: found.ledger,
    costs: found.costs,
    // Only where the hands listened there: the answer of every other visit keeps its shape.
    ...(exercise.actions.some(({ kind }) => kind === 'apex')
      ? {
          heartSounds: played.heart.map(({ atSeconds, beat, heart, levelDb }) => ({
            atSeconds,
            beat,
            heart,
            loudness: levelDb,
          })),
        }
      : {}),
    actions: exercise.actions,
    scenario: exercise.scenario.id,
    report: reportItems(exercise.scenario, words),
    book: 'simulated',
    seed: exercise.seed,
    durationSeconds: exercise.seconds,
    computedBy: computedBy(version, SIMULATE_RULE, null),
  };
  return { kind: 'one', json, lines: linesOf(found, exercise, words) };
}

/** So many of the parts of a difference are named, the largest. */
const NAMED = 2;

/** Why the reading is not what was true in the minute about it: the largest parts of its ledger. */
function offRows({ ledger }: ReturnType<typeof debrief>, words: Words): string[][] {
  const said = (['systolic', 'diastolic'] as const).flatMap((side) => {
    const one = ledger[side];
    if (one === null) return [];
    const parts = [
      ...LEDGER_PARTS.map((part) => ({ label: words.sentence(`debrief.part-${part}`), mmHg: one[part] })),
      ...one.technique.map(({ code, mmHg }) => ({ label: words.sentence(`debrief.effect-${code}`), mmHg })),
    ];
    const why = parts
      .filter(({ mmHg }) => Math.abs(mmHg) >= WORTH_TELLING_MMHG)
      .sort((a, b) => Math.abs(b.mmHg) - Math.abs(a.mmHg))
      .slice(0, NAMED)
      .map(({ label, mmHg }) => words.sentence('commandLine.offPart', { part: label, mmHg }));
    if (why.length === 0) return [];
    const part = words.sentence(`debrief.${side}`);
    return [words.sentence('commandLine.offBy', { part, mmHg: one.error, why: why.join(', ') })];
  });
  return said.map((text, i) => [i === 0 ? words.sentence('commandLine.off') : '', text]);
}

/** Where the sounds of this person fall silent on the way down, or that they do nowhere. */
function gapText({ gap }: ReturnType<typeof debrief>, words: Words): string {
  return gap === null ? words.sentence('commandLine.gapNone') : words.sentence('commandLine.gapFrom', gap);
}

/** As Korotkoff’s phases are numbered. */
const PHASES = { 1: 'I', 2: 'II', 3: 'III', 4: 'IV' } as const;

/** From where to where in the cuff each phase was there to be heard in this letting down. */
function phasesText({ sounds, fall }: ReturnType<typeof debrief>, words: Words): string {
  const heard = sounds.filter(
    ({ isAudible, atSeconds }) => isAudible && atSeconds >= (fall?.peakSeconds ?? 0),
  );
  const said = ([1, 2, 3, 4] as const).flatMap((phase) => {
    const of = heard.filter((one) => one.phase === phase).map(({ cuffMmHg }) => cuffMmHg);
    if (of.length === 0) return [];
    const [fromMmHg, toMmHg] = [Math.max(...of), Math.min(...of)];
    return [words.sentence('commandLine.phaseFrom', { phase: PHASES[phase], fromMmHg, toMmHg })];
  });
  return said.length === 0 ? words.sentence('commandLine.phasesNone') : said.join(', ');
}

function linesOf(found: ReturnType<typeof debrief>, { seconds }: Exercise, words: Words): string[] {
  const { truth, reading, fall } = found;
  const read =
    reading === null || reading.systolic === null || reading.diastolic === null
      ? words.sentence('commandLine.nothingRead')
      : words.sentence('commandLine.readingOf', {
          systolic: reading.systolic,
          diastolic: reading.diastolic,
        });
  const during = { duringSystolic: truth.longRun.systolic, duringDiastolic: truth.longRun.diastolic };
  return columns([
    [
      words.sentence('commandLine.simulated'),
      words.sentence('commandLine.visitOf', { seconds, peakMmHg: fall?.peakMmHg ?? 0 }),
    ],
    [
      words.sentence('commandLine.truth'),
      words.sentence('commandLine.truthAtRest', { ...truth.rest, ...during }),
    ],
    [words.sentence('commandLine.gap'), gapText(found, words)],
    [words.sentence('commandLine.phases'), phasesText(found, words)],
    [words.sentence('commandLine.read'), read],
    ...offRows(found, words),
  ]);
}

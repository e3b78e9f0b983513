import {
  COUNT_FIGURES,
  type CountOf,
  DEFAULT_COUNT_RULES,
  firstWindow,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  backgroundThresholdDb,
  beats,
  bladderFor,
  isLoudInAnyRoom,
  makePerson,
  noiseOf,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { demonstrated } from './demonstrate.js';
import type { Exercise } from './exercise.js';
import { type Manner, mannerOf } from './manner.js';
import { replay } from './replay.js';
import { roundedMark } from './roundedMark.js';
import type { Before, HandStep } from './show.js';

/**
 * What is done or found from a second of the visit on. `other-gauge`: the person's own was looked at first and put away,
 * `mmHg` is what it showed with no air in the cuff; `quieter`: a place where sounds can be heard; `loud`: there is none, so the pulse is felt; `gap`: the sounds fell silent between
 * two phases, `gap-over`: they are back. `mmHg` of a moment is what is written down, and of a gap between which sounds it was; null where
 * it is no pressure.
 */
export type ShownStep = {
  readonly code: HandStep['code'] | 'first' | 'muffled' | 'last' | 'gap' | 'gap-over' | 'back' | 'over';
  readonly atSeconds: number;
  readonly mmHg: number | null;
  /** Of `both-counted`: beats of the heart and beats felt at the wrist in the same minute. */
  readonly perMinute?: HandStep['perMinute'];
  readonly counted?: HandStep['counted'];
};

/** How a person is taken by somebody who knows how, step by step in order of time. */
export type Showing = {
  readonly exercise: Exercise;
  readonly manner: Manner;
  readonly steps: readonly ShownStep[];
};

const MOMENTS = {
  'first sound': 'first',
  muffled: 'muffled',
  'last sound': 'last',
  'pulse back': 'back',
} as const;

/**
 * The demonstration of a simulated person, as its own lesson has it: felt where the ear fails, past slowly where the breath
 * shows, with a gauge that is right and where it is quiet, or by feel where no room is; the heart counted at its apex where beats are lost on the way to the wrist.
 * Source: bedside handbook 1.10, 3.4 to 3.8; physiology handbook 8.6, 2.5.
 */
export function showing(scenario: Scenario, seed: number): Showing {
  const { instrument } = scenario;
  const isPutAway =
    instrument !== null && (instrument.zeroOffsetMmHg !== 0 || instrument.leakMmHgPerMinute > 0);
  const isNoisy = backgroundThresholdDb(scenario.noiseDbA) > 0;
  const isLoud = isLoudInAnyRoom(scenario);
  const circumstances = { ...PROPER, isQuieter: isNoisy && !isLoud };
  const manner = isLoud ? 'by-feel' : mannerOf({ ...scenario, noiseDbA: noiseOf(scenario, circumstances) });
  const bladder = bladderFor(scenario.armCm);
  const listensAtApex = losesBeats(scenario, seed);
  const { exercise, steps } = demonstrated(
    GOOD_OBSERVER,
    scenario,
    seed,
    circumstances,
    { ...SOUND_INSTRUMENT, bladder },
    manner,
    {
      said: [
        ...(isPutAway ? [{ code: 'other-gauge' as const, mmHg: instrument.zeroOffsetMmHg }] : []),
        ...(isNoisy ? [{ code: isLoud ? ('loud' as const) : ('quieter' as const), mmHg: null }] : []),
        ...(bladder === SOUND_INSTRUMENT.bladder ? [] : [{ code: 'measured' as const, mmHg: null }]),
      ],
      counts: countsOf(scenario, listensAtApex),
      listensAtApex,
    },
  );
  const { run } = exercise.evidence;
  const moments =
    run?.run.moments.map(({ what, mmHg, atSeconds }) => ({
      code: MOMENTS[what],
      atSeconds: run.startSeconds + (atSeconds ?? 0),
      mmHg,
    })) ?? [];
  const gap = manner === 'by-feel' ? [] : gapSteps(exercise);
  const over = { code: 'over' as const, atSeconds: exercise.seconds, mmHg: null };
  return {
    exercise,
    manner,
    steps: [...[...steps, ...moments, ...gap].toSorted((a, b) => a.atSeconds - b.atSeconds), over],
  };
}

/**
 * Which signs the person is there for, each for the window of the rules: a pulse that is not even, where it is not counted at the apex
 * anyway, and breaths that are not as usual. Source: bedside handbook 1.5 and 2.1.
 */
function countsOf({ rhythm, breathing }: Scenario, listensAtApex: boolean): Before['counts'] {
  const isUneven = rhythm.kind !== 'sinus' && !listensAtApex;
  const windowOf = (of: CountOf, rhythmFelt: 'irregular' | null) =>
    firstWindow(of, { ...UNKNOWN_CIRCUMSTANCES, rhythmFelt }, false, DEFAULT_COUNT_RULES).windowSeconds;
  return [
    ...(isUneven ? [{ of: 'pulse' as const, windowSeconds: windowOf('pulse', 'irregular') }] : []),
    ...(breathing.kind === 'rest'
      ? []
      : [{ of: 'breaths' as const, windowSeconds: windowOf('breaths', null) }]),
  ];
}

/** So many beats without a sound, one after the other, are a silence and no weak beat. */
const SILENT_BEATS = 4;
/** A silence is noticed so long after its last sound, seconds. */
const NOTICED_SECONDS = 2;

/** Where this very fall went through a silent gap: noticed a moment after its last sound, over with the next one. */
function gapSteps(exercise: Exercise): ShownStep[] {
  const { evidence, scenario, seed, circumstances } = exercise;
  if (evidence.run === null || makePerson(scenario, seed).gap === null) return [];
  const { startSeconds } = evidence.run;
  const thresholdDb =
    GOOD_OBSERVER.reader.thresholdDb + backgroundThresholdDb(noiseOf(scenario, circumstances));
  const heard = replay(exercise).sounds.filter(
    (one) => one.atSeconds > startSeconds && one.levelDb >= thresholdDb,
  );
  const at = heard.findIndex((one, index) => one.beat - (heard[index - 1]?.beat ?? one.beat) > SILENT_BEATS);
  const [before, after] = [heard[at - 1], heard[at]];
  if (at < 1 || before === undefined || after === undefined) return [];
  const noticed = Math.min(before.atSeconds + NOTICED_SECONDS, (before.atSeconds + after.atSeconds) / 2);
  return [
    { code: 'gap', atSeconds: noticed, mmHg: roundedMark(before.cuffMmHg) },
    { code: 'gap-over', atSeconds: after.atSeconds, mmHg: roundedMark(after.cuffMmHg) },
  ];
}

/** Over so many minutes: from one to the next it differs a lot. */
const DEFICIT_MINUTES = 10;

/** Whether so many beats do not reach the wrist that it is to be reported. Source: bedside handbook 1.10. */
function losesBeats(scenario: Scenario, seed: number): boolean {
  const all = beats(makePerson(scenario, seed), PROPER, 0, 60 * DEFICIT_MINUTES);
  const lost = all.filter(({ isFelt }) => !isFelt).length;
  return lost / DEFICIT_MINUTES > COUNT_FIGURES.deficitReportPerMinute.value;
}

import type { Refusal } from '@evenfall/clinical';
import type { Scenario } from '@evenfall/physiology';
import { type HeardLetDown, heardLetDown, renderRun, wav } from '@evenfall/physiology/audio';
import type { Words } from '@evenfall/words';
import { refused } from '../answer.js';
import { command } from '../command.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { takenPath, writeNewFile } from '../output/newFile.js';
import { namesFile, scenarioItems, scenarioNamed } from './scenarioNamed.js';
import { soundTrace } from './soundTrace.js';
import { SOUND_OPTIONS, type TypedSound, typedSound } from './typedSound.js';

/** Another sound of the same events gets another rule. */
const SOUND_RULE = 'sound-2';

type Asked = TypedSound & { readonly named: string };

/** `evenfall sound`: one let-down of a simulated person as a WAV file, with the gauge beside it as CSV. */
export const sound = command<Asked>({
  name: 'sound',
  summary: 'commands.sound',
  options: SOUND_OPTIONS,
  operands: { hint: 'SCENARIO', least: 1, most: 1, expected: 'a-scenario' },
  list: (words) => scenarioItems(words, 'evenfall sound'),

  parse(given, [named = '']) {
    const read = typedSound(given);
    return read.ok ? { ok: true, value: { ...read.value, named } } : read;
  },

  async run(asked, { words, version, stdin }) {
    const refusedBy = (refusals: readonly Refusal[]) => refused(refusals.map((one) => words.problem(one)));
    const scenario = await scenarioNamed(asked.named, stdin);
    if (!scenario.ok) {
      const file = namesFile(asked.named) ? asked.named : null;
      return refused(scenario.refusals.map((one) => words.problem(one, { file })));
    }
    const { wavPath, csvPath, isReplaced } = asked;
    const taken = await Promise.all([wavPath, csvPath].map((path) => takenPath('--out', path, isReplaced)));
    if (taken.flat().length > 0) return refusedBy(taken.flat());
    const heard = heardLetDown(scenario.value, asked.seed, asked.mmHgPerSecond);
    const files = [
      { field: '--out', path: csvPath, bytes: new TextEncoder().encode(soundTrace(heard)) },
      { field: '--out', path: wavPath, bytes: soundFile(scenario.value, heard, asked, version) },
    ];
    for (const file of files) {
      const problems = await writeNewFile(file, isReplaced);
      if (problems.length > 0) return refusedBy(problems);
    }
    const { rest, longRun } = heard.simulation.truth;
    const json = {
      scenario: scenario.value.id,
      seed: asked.seed,
      mmHgPerSecond: asked.mmHgPerSecond,
      book: 'simulated',
      wav: wavPath,
      csv: csvPath,
      durationSeconds: heard.seconds,
      peakMmHg: heard.peakMmHg,
      letDownFromSeconds: heard.letDownFromSeconds,
      sounds: heard.simulation.sounds.length,
      truth: {
        systolic: rest.systolic,
        diastolic: rest.diastolic,
        during: { systolic: longRun.systolic, diastolic: longRun.diastolic },
      },
      chestPiece: asked.end,
      room: asked.hasRoom,
      loudspeakerVoice: asked.isLoudspeakerVoice,
      computedBy: computedBy(version, SOUND_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(asked, heard, words) };
  },
});

/** The file says that nobody is behind it, and with what it can be made again. */
function soundFile(scenario: Scenario, heard: HeardLetDown, asked: TypedSound, version: string): Uint8Array {
  const { simulation, contacts, seconds } = heard;
  const { samples, rate, isLoudspeakerVoice } = renderRun(simulation.sounds, {
    seed: asked.seed,
    fromSeconds: 0,
    toSeconds: seconds,
    end: asked.end,
    isLoudspeakerVoice: asked.isLoudspeakerVoice,
    roomDbA: asked.hasRoom ? scenario.noiseDbA : null,
    cuff: { fromSeconds: 0, perSecond: simulation.tracePerSecond, mmHg: simulation.cuff },
    contacts,
  });
  const made = `${scenario.id}, seed ${asked.seed}, ${asked.mmHgPerSecond} mmHg/s, evenfall ${version}`;
  return wav(samples, rate, `SIMULATED: ${made}${isLoudspeakerVoice ? ', LOUDSPEAKER VOICE' : ''}`);
}

function linesOf(asked: Asked, { seconds, peakMmHg, simulation }: HeardLetDown, words: Words): string[] {
  const { rest, longRun } = simulation.truth;
  const during = { duringSystolic: longRun.systolic, duringDiastolic: longRun.diastolic };
  const from = { seconds, peakMmHg, mmHgPerSecond: asked.mmHgPerSecond };
  return columns([
    [words.sentence('commandLine.simulated'), words.sentence('commandLine.letDownHeard', from)],
    [words.sentence('commandLine.soundFile'), asked.wavPath],
    [words.sentence('commandLine.gaugeFile'), asked.csvPath],
    [words.sentence('commandLine.truth'), words.sentence('commandLine.truthAtRest', { ...rest, ...during })],
    ...(asked.isLoudspeakerVoice
      ? [[words.sentence('commandLine.note'), words.sentence('commandLine.loudspeakerVoice')]]
      : []),
  ]);
}

import { bladderFor, PROPER, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { demonstrate, type Exercise, GOOD_OBSERVER } from '@evenfall/practice';
import { v7 } from 'uuid';

type Practised = {
  readonly scenario: string;
  readonly seed: number;
  readonly circumstances?: Partial<Exercise['circumstances']>;
  readonly hand?: Partial<typeof GOOD_OBSERVER.hand>;
  readonly saysActNow?: boolean;
  readonly model?: number;
  /** As it was kept before several readings and the protocol were. */
  readonly isFirstSchema?: boolean;
  /** The same reading once more before it, at the same moment: two of one visit. */
  readonly isTwice?: boolean;
};

/** Keeps an exercise as the practice room would, made by a virtual observer (invented). Answers its id. */
export async function keepExercise(address: string, made: Practised): Promise<string> {
  const scenario = scenarioOf(made.scenario);
  if (scenario === undefined) throw new Error(`no scenario ${made.scenario}`);
  const observer = { ...GOOD_OBSERVER, hand: { ...GOOD_OBSERVER.hand, ...made.hand } };
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const exercise = demonstrate(
    observer,
    scenario,
    made.seed,
    { ...PROPER, ...made.circumstances },
    instrument,
  );
  const { agents } = (await (await fetch(`${address}/api/agents`)).json()) as { agents: { id: string }[] };
  const at = new Date().toISOString().replace(/\.\d+Z$/, '+00:00');
  const id = v7();
  const entry = {
    id,
    frame: 1,
    book: 'simulated',
    kind: 'exercise',
    schema: made.isFirstSchema === true ? 1 : 4,
    person: null,
    round: null,
    session: null,
    agent: agents[0]?.id,
    role: 'observer',
    device: v7(),
    sequence: 1,
    measuredAt: { at, zone: 'Europe/Lisbon', asEntered: null },
    writtenAt: at,
    amends: null,
    content: {
      ...exercise,
      ...(made.isTwice === true ? { earlier: [takenFrom(exercise)] } : {}),
      model: made.model ?? exercise.model,
      evidence: { ...exercise.evidence, saysActNow: made.saysActNow ?? null },
      aids: { hasHearingAid: false, isAmplified: false, isLoudspeakerVoice: false, hadSound: true },
      ...(made.isFirstSchema === true
        ? { schema: 1, earlier: undefined }
        : { judgedBy: { presetVersion: null } }),
    },
  };
  const answer = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ entries: [entry] }),
  });
  if (answer.status !== 201) throw new Error(await answer.text());
  return id;
}

function takenFrom({ evidence, entered: { systolic, muffled, diastolic } }: Exercise) {
  return { ...evidence.run, entered: { systolic, muffled, diastolic } };
}

import { type NumberFault, type Parsed, type Refusal, readFields, refusal } from '@evenfall/clinical';
import { LISTENING_ENDS, type ListeningEnd } from '@evenfall/physiology/audio';
import type { Given, Option } from '../options/option.js';

/** What is to be heard, and where it is to be written. */
export type TypedSound = {
  readonly seed: number;
  readonly mmHgPerSecond: number;
  readonly end: ListeningEnd;
  readonly isLoudspeakerVoice: boolean;
  readonly hasRoom: boolean;
  readonly wavPath: string;
  /** Beside it, under the same name. */
  readonly csvPath: string;
  readonly isReplaced: boolean;
};

export const SOUND_OPTIONS: readonly Option[] = [
  { name: 'seed', kind: 'value', means: 'options.seed', hint: 'NUMBER' },
  { name: 'rate', kind: 'value', means: 'options.soundRate', hint: 'MMHG_PER_SECOND' },
  { name: 'out', kind: 'value', means: 'options.soundOut', hint: 'RUN.wav', required: true },
  { name: 'chest-piece', kind: 'value', means: 'options.listeningEnd', choices: LISTENING_ENDS },
  { name: 'room', kind: 'switch', means: 'options.withRoom' },
  { name: 'loudspeaker', kind: 'switch', means: 'options.loudspeaker' },
  { name: 'replace', kind: 'switch', means: 'options.replaceFile' },
];

const USUAL = { seed: '1', rate: '2.5' };
/** Slower or faster than anybody lets a cuff down; mmHg/s. Source: decision of this project. */
const RATES = { minimum: 0.5, maximum: 20 };
/** Chance is drawn from 32 bits. */
const SEEDS = { minimum: 0, maximum: 2 ** 32 - 1 };
const WAV = /\.wav$/i;

/** Reads the options. Errors: `/NAME` of the option: `missing`, `not-a-number`, `not-whole`, `out-of-range`, `contradicts`. */
export function typedSound(given: Given): Parsed<TypedSound> {
  const typed = { seed: given.text('seed') ?? USUAL.seed, rate: given.text('rate') ?? USUAL.rate };
  const reader = readFields(typed, ['seed', 'rate']);
  const seed = reader.number('seed', wholeWithin, 'a-whole-number');
  const mmHgPerSecond = reader.number('rate', (value) => within(value, RATES));
  const refusals: Refusal[] = [...reader.refusals];
  const wavPath = given.text('out');
  if (wavPath === null || wavPath === '') refusals.push(refusal('/out', 'missing', 'wav-file', wavPath));
  else if (!WAV.test(wavPath)) refusals.push(refusal('/out', 'contradicts', 'wav-file', wavPath));
  if (refusals.length > 0 || seed === null || mmHgPerSecond === null || wavPath === null) {
    return { ok: false, refusals };
  }
  return {
    ok: true,
    value: {
      seed,
      mmHgPerSecond,
      end: LISTENING_ENDS.find((one) => one === given.text('chest-piece')) ?? 'bell',
      isLoudspeakerVoice: given.isOn('loudspeaker'),
      hasRoom: given.isOn('room'),
      wavPath,
      csvPath: wavPath.replace(WAV, '.csv'),
      isReplaced: given.isOn('replace'),
    },
  };
}

type Limits = { readonly minimum: number; readonly maximum: number };

function within(value: number, limits: Limits): NumberFault | null {
  if (value >= limits.minimum && value <= limits.maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: limits };
}

function wholeWithin(value: number): NumberFault | null {
  if (!Number.isInteger(value)) return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
  return within(value, SEEDS);
}

import { type Protocol, type RunCircumstances, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Item } from '../command.js';
import type { Given, Option } from '../options/option.js';
import { chosenProtocol, presetItems, presetOption } from './presets.js';

/** The options of `run` and `reading` alike. */
export const RUN_OPTIONS: readonly Option[] = [
  { name: 'rhythm', kind: 'value', means: 'options.runRhythm', choices: ['regular', 'irregular'] },
  presetOption('preset', 'deflation', 'options.deflationPreset'),
  presetOption('inflation', 'inflation', 'options.inflationPreset'),
];

export type RunTyped = { readonly circumstances: RunCircumstances; readonly protocol: Protocol | null };

export function runTyped(given: Given): RunTyped {
  const rhythmFelt = given.text('rhythm') as RunCircumstances['rhythmFelt'];
  return {
    circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, rhythmFelt },
    protocol: chosenProtocol({ deflation: given.text('preset'), inflation: given.text('inflation') }),
  };
}

/** What there is to choose from, letting down before pumping up. */
export function runItems(words: Words): Item[] {
  return [...presetItems(words, 'deflation', 'preset'), ...presetItems(words, 'inflation', 'inflation')];
}

import type { FieldReader, NumberFault } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { isBlank } from '../contract/numberText.js';
import { refusal } from '../contract/refusal.js';
import { passes } from '../contract/threshold.js';
import type { SignFlagCode } from './codes.js';
import { SIGN_COMPARISONS as SIDE } from './comparisons.js';
import { SIGN_FIGURES as F } from './figures.js';
import { textOrNone, wholeWithin, within, yesNo } from './readSign.js';
import { PAIN_TOOLS, PAIN_WORDS, type Pain, type PainTool } from './sign.js';

export const PAIN_FIELDS = ['of', 'score', 'word', 'tool', 'moving', 'where'] as const;

/** Reads a pain: a word with the verbal tool, else a score; null if anything was refused. */
export function readPain(reader: FieldReader): Pain | null {
  const tool = reader.choice<PainTool>('tool', PAIN_TOOLS, null);
  const isVerbal = tool === 'verbal';
  const other = isVerbal ? 'score' : 'word';
  const got = reader.raw(other);
  if (tool !== null && !isBlank(got)) {
    reader.refusals.push(refusal(`/${other}`, 'contradicts', isVerbal ? 'word-not-score' : 'score-not-word', got)); // biome-ignore format: one thought
  }
  const score = tool === null || isVerbal ? null : reader.number('score', scoreFault(tool));
  const word = isVerbal ? reader.choice('word', PAIN_WORDS, null) : null;
  const moving = yesNo(reader, 'moving', null);
  const where = textOrNone(reader, 'where');
  if (tool === null || (score === null && word === null)) return null;
  return { of: 'pain', score, word, tool, moving, where };
}

/** What a tool can give: a line any number, faces even ones, the rest whole ones. */
function scoreFault(tool: PainTool): (score: number) => NumberFault | null {
  const limits = [0, F.mostPain.value] as const;
  if (tool === 'visual-analogue') return within(...limits);
  if (tool !== 'face') return wholeWithin(...limits);
  return (score) =>
    wholeWithin(...limits)(score) ??
    (score % 2 === 0 ? null : { code: 'impossible', expected: 'even-number', figures: {} });
}

/** Severe pain is told. Source: bedside handbook 4.3 (from memory). */
export function painFlags({ score, word }: Pain): Flag<SignFlagCode>[] {
  const severeFrom = F.severePain.value;
  if (score !== null && passes(score, SIDE.severePain, severeFrom)) {
    return [{ code: 'pain-severe', figures: { score, severeFrom } }];
  }
  return word === 'severe' ? [{ code: 'pain-severe', figures: {} }] : [];
}

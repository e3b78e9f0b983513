import { CUFF_SCHEMES } from '@evenfall/clinical';
import {
  AMENDMENT_REASONS,
  type Amends,
  FACT_NAMES,
  type FactContent,
  type FactName,
  PERSON_FACTS,
} from '@evenfall/record';

/** The fields of a fact as typed; days as the native date control gives them, `YYYY-MM-DD`. */
export const FACT_FIELDS = [
  'fact',
  'side',
  'weeks',
  'fromMmHg',
  'toMmHg',
  'cuff',
  'prescriber',
  'sex',
  'from',
  'until',
  'text',
] as const;
export type FactField = (typeof FACT_FIELDS)[number];
export type FactFields = Readonly<Record<FactField, string>>;

/** What is wrong with a field: a key of the words of this page. */
export type FactWrongCode =
  | 'factMissing'
  | 'chooseOne'
  | 'weeksWrong'
  | 'mmHgWrong'
  | 'gapWrong'
  | 'prescriberMissing'
  | 'dayWrong'
  | 'dayAhead'
  | 'untilWrong'
  | 'textLong';
export type FactWrong = Readonly<Partial<Record<FactField, FactWrongCode>>>;
type Wrong = { -readonly [Field in FactField]?: FactWrongCode };

/** The fields beyond kind and days that a kind of fact needs. */
export function fieldsOf(fact: FactName): readonly FactField[] {
  switch (fact) {
    case 'pregnancy':
      return ['weeks'];
    case 'gap':
      return ['fromMmHg', 'toMmHg'];
    case 'usual-cuff':
      return ['cuff'];
    case 'oxygen-scale-2':
      return ['prescriber'];
    case 'reference-sex':
      return ['sex'];
    default:
      return isOfPerson(fact) ? [] : ['side'];
  }
}

function isOfPerson(fact: FactName): boolean {
  return PERSON_FACTS.some((one) => one === fact);
}

/** A cuff with the scheme that it is a cuff of, as one choice: `aha-2005/adult`. */
export const CUFF_CHOICES: readonly string[] = CUFF_SCHEMES.flatMap(({ id, cuffs }) =>
  cuffs.map((cuff) => `${id}/${cuff.id}`),
);

const MOST_WEEKS = 45;
const MOST_MMHG = 300;
const LONGEST_TEXT = 500;
const LONGEST_NAME = 200;

/**
 * Reads a fact as typed, or says what is wrong with it, each at its field. A first day ahead is refused: a slip in
 * the year would keep the fact from being shown before a reading.
 *
 * @param today the local date
 */
export function readFact(
  typed: FactFields,
  today: string,
): { readonly content: FactContent | null; readonly wrong: FactWrong } {
  const wrong: Wrong = {};
  const fact = FACT_NAMES.find((one) => one === typed.fact);
  if (fact === undefined) wrong.fact = 'factMissing';
  const about = fact === undefined ? null : readAbout(fact, typed, wrong);
  const { from } = typed;
  if (!isDay(from)) wrong.from = 'dayWrong';
  else if (from > today) wrong.from = 'dayAhead';
  const until = typed.until === '' ? null : typed.until;
  if (until !== null && (!isDay(until) || until < from)) wrong.until = 'untilWrong';
  const text = typed.text.trim();
  if (text.length > LONGEST_TEXT) wrong.text = 'textLong';
  if (about === null || Object.keys(wrong).length > 0) return { content: null, wrong };
  return { content: { about, from, until, text: text === '' ? null : text }, wrong };
}

function readAbout(fact: FactName, typed: FactFields, wrong: Wrong): FactContent['about'] | null {
  switch (fact) {
    case 'pregnancy': {
      const weeks = typed.weeks.trim();
      if (weeks === '') return { fact, weeks: null };
      const found = wholeUpTo(weeks, MOST_WEEKS);
      if (found === null) wrong.weeks = 'weeksWrong';
      return found === null ? null : { fact, weeks: found };
    }
    case 'gap': {
      const [fromMmHg, toMmHg] = [wholeUpTo(typed.fromMmHg, MOST_MMHG), wholeUpTo(typed.toMmHg, MOST_MMHG)];
      if (fromMmHg === null) wrong.fromMmHg = 'mmHgWrong';
      if (toMmHg === null) wrong.toMmHg = 'mmHgWrong';
      if (fromMmHg === null || toMmHg === null) return null;
      if (fromMmHg <= toMmHg) wrong.toMmHg = 'gapWrong';
      return fromMmHg <= toMmHg ? null : { fact, fromMmHg, toMmHg };
    }
    case 'usual-cuff': {
      const scheme = CUFF_SCHEMES.find(({ id }) => typed.cuff.startsWith(`${id}/`));
      const cuff = scheme?.cuffs.find(({ id }) => typed.cuff === `${scheme.id}/${id}`);
      if (scheme === undefined || cuff === undefined) wrong.cuff = 'chooseOne';
      return scheme === undefined || cuff === undefined ? null : { fact, scheme: scheme.id, cuff: cuff.id };
    }
    case 'oxygen-scale-2': {
      const prescriber = typed.prescriber.trim();
      if (prescriber === '' || prescriber.length > LONGEST_NAME) wrong.prescriber = 'prescriberMissing';
      return { fact, prescriber };
    }
    case 'reference-sex': {
      const sex = (['f', 'm'] as const).find((one) => one === typed.sex);
      if (sex === undefined) wrong.sex = 'chooseOne';
      return sex === undefined ? null : { fact, sex };
    }
    case 'gave-birth':
    case 'cannot-stand':
    case 'irregular-rhythm':
    case 'tremor':
    case 'pacemaker':
    case 'rate-slowing-drug':
    case 'spinal-injury':
      return { fact };
    default: {
      const side = (['left', 'right'] as const).find((one) => one === typed.side);
      if (side === undefined) wrong.side = 'chooseOne';
      return side === undefined ? null : { fact, side };
    }
  }
}

/** A whole number from 0 as typed, at most so much; null for anything else. */
function wholeUpTo(text: string, most: number): number | null {
  if (!/^\d{1,3}$/.test(text.trim())) return null;
  const value = Number(text);
  return value <= most ? value : null;
}

/** Whether a text is a day of the calendar, `YYYY-MM-DD`. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const at = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text);
}

/** Reads the last day of a fact; null for what is none, or lies before its first. */
export function readEnd(typed: string, { from }: Pick<FactContent, 'from'>): string | null {
  return isDay(typed) && typed >= from ? typed : null;
}

/** Reads why a fact should never have stood there; what is wrong is said at its field. */
export function readError(
  typed: { readonly reason: string; readonly text: string },
  entry: string,
): { readonly amends: Amends | null; readonly wrong: 'reasonMissing' | 'textMissing' | null } {
  const reason = AMENDMENT_REASONS.find((one) => one === typed.reason);
  if (reason === undefined) return { amends: null, wrong: 'reasonMissing' };
  const text = typed.text.trim();
  if (reason === 'other' && text === '') return { amends: null, wrong: 'textMissing' };
  return { amends: { entry, reason, text: text === '' ? null : text }, wrong: null };
}

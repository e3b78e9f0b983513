import type { Flag, Refusal } from '@evenfall/clinical';
import type { Catalogue, FiguresAt, SentenceKey, StartCode, TitleOf } from './catalogue.js';
import { english } from './english/index.js';
import { type Figures, figuresOf, MissingFigure } from './figures.js';
import { type Manner, USUAL_MANNER } from './manner.js';
import { type Place, type Problem, placed } from './problem.js';
import { type Say, sayIn } from './say.js';
import { type SayProblem, type SentAnswer, type SentProblem, sentAnswer, sentProblem } from './sentAnswer.js';
import { type Said, together } from './together.js';

/** The catalogue in one locale: codes and figures in, sentences out. */
export type Words = {
  readonly say: Say;
  /** The same language with dates, times or units in another manner. */
  readonly inManner: (change: Partial<Manner>) => Words;
  /**
   * One sentence for a flag or a reason: what it means and what to do. A flag may be years old or come from a newer
   * program: where the catalogue has no sentence that fits its code and figures, it says that and names the code.
   */
  readonly detail: (flag: Flag) => string;
  /** A flag or reason as every answer carries it. Source: docs/conventions.md section 3. */
  readonly flagged: (flag: Flag) => Flag & { readonly detail: string };
  /** Flags and reasons in sentences; what several of them ask for alike is said once. */
  readonly together: (flags: readonly Flag[]) => readonly Said[];
  /** A text of a screen, of the command line or a caution, by key. */
  readonly sentence: <Key extends SentenceKey>(key: Key, ...figures: FiguresAt<Key>) => string;
  /** What a choice or a preset is called; its id if it has no title (a clinic's own preset). */
  readonly title: (of: TitleOf, id: string) => string;
  /** A refused input with its rule and its message in words. */
  readonly problem: (refusal: Refusal, place?: Place) => Problem;
  /** A problem that a server sent, in these words; in the server's where this program has none for its code. */
  readonly sentProblem: (sent: SentProblem, place?: Place) => Pick<Problem, 'expected' | 'message'>;
  /** Why a server refused, in these words. */
  readonly sentAnswer: (sent: SentAnswer, place?: Place) => string;
  /** Why a record could not be opened, in words; `fault` for a code that has no sentence. */
  readonly refusedStart: (refused: RefusedStart) => Problem;
};

/** A refused start as the server tells it: a code, and what a sentence about it may quote. */
export type RefusedStart = {
  readonly code: string;
  readonly field: string | null;
  readonly expected: string | null;
  readonly got: string | null;
  readonly figures: Readonly<Record<string, number>>;
  readonly names: Readonly<Record<string, string>>;
};

/**
 * The words in English, at once; `loadWords` has those of every language. For the tag of another language numbers are
 * written as English writes them too, so that one sentence never mixes two languages.
 *
 * @param locale a BCP 47 tag, such as `en-GB`
 */
export function wordsFor(locale: string, manner?: Manner): Words {
  return wordsIn(english, isEnglish(locale) ? locale : 'en', manner);
}

/** Whether a tag is of English; false for one that is none (a browser on a machine without a locale gives `en-US@posix`). */
export function isEnglish(locale: string): boolean {
  try {
    return new Intl.Locale(locale).language === 'en';
  } catch {
    return false;
  }
}

/** The words of a given catalogue. */
export function wordsIn(catalogue: Catalogue, locale: string, manner: Manner = USUAL_MANNER): Words {
  const say = sayIn(locale, manner);
  const detail = (flag: Flag): string =>
    fitting(catalogue, flag, say) ?? catalogue.problemWords.unknownCode({ code: flag.code });
  const saying: SayProblem = (refusal, place = {}) => problem(catalogue, say, refusal, place);
  return {
    say,
    inManner: (change) => wordsIn(catalogue, locale, { ...manner, ...change }),
    detail,
    flagged: (flag) => ({ code: flag.code, detail: detail(flag), figures: flag.figures }),
    together: (flags) => together(flags, catalogue, say, detail),
    sentence: (key, ...figures) => text(catalogue, key, figures[0], say),
    title: (of, id) => (catalogue.titles[of] as Readonly<Record<string, string>>)[id] ?? id,
    problem: saying,
    sentProblem: (sent, place) => sentProblem(sent, catalogue, saying, place),
    sentAnswer: (sent, place) => sentAnswer(sent, catalogue, saying, place),
    refusedStart: (refused) => startProblem(catalogue, refused),
  };
}

/** The sentence of a code, said of its figures; null if there is none or a figure it needs is absent. */
function fitting(catalogue: Catalogue, { code, figures }: Flag, say: Say): string | null {
  const details: Details = catalogue.details;
  const sentence = Object.hasOwn(details, code) ? details[code] : undefined;
  try {
    return sentence?.(figuresOf(code, figures), say) ?? null;
  } catch (fault) {
    if (fault instanceof MissingFigure) return null;
    throw fault;
  }
}

type Details = Readonly<Record<string, (figures: Figures, say: Say) => string>>;

function text(catalogue: Catalogue, key: SentenceKey, figures: unknown, say: Say): string {
  const [section, name] = key.split('.') as [string, string];
  const sections = catalogue.sections as Readonly<Record<string, Readonly<Record<string, Text>>>>;
  const found = sections[section]?.[name];
  if (found === undefined) throw new Error(`No text for ${key}`);
  return typeof found === 'string' ? found : found(figures, say);
}

type Text = string | ((figures: unknown, say: Say) => string);

function problem(catalogue: Catalogue, say: Say, refusal: Refusal, place: Place): Problem {
  const where = placed(refusal, place);
  const rules = catalogue.expected as Readonly<Record<string, Expected>>;
  const rule = rules[refusal.expected] ?? catalogue.expectedByCode[refusal.code];
  const expected = rule(figuresOf(refusal.expected, refusal.figures), say, refusal.choices);
  const { theInput } = catalogue.problemWords;
  const got = refusal.got === null ? null : `“${refusal.got}”`;
  const message = catalogue.messages[refusal.code]({
    field: where.field ?? theInput,
    expected,
    got,
    came: got === null ? '' : ` (${got})`,
  });
  return {
    file: where.file,
    line: where.line,
    column: where.column,
    field: where.field,
    code: refusal.code,
    expected,
    got: refusal.got,
    message,
  };
}

type Expected = (figures: Figures, say: Say, choices: readonly string[]) => string;

function startProblem(
  catalogue: Catalogue,
  { code, field, expected, got, figures, names }: RefusedStart,
): Problem {
  const sentences: Readonly<Record<string, (names: Readonly<Record<string, string>>) => string>> =
    catalogue.starting;
  const sentence = sentences[code];
  const numbers = Object.entries(figures).map(([key, value]) => [key, String(value)]);
  const quoted = {
    ...(expected === null ? {} : { expected }),
    ...(got === null ? {} : { got }),
    ...Object.fromEntries(numbers),
    ...names,
  };
  return {
    file: null,
    line: null,
    column: null,
    field,
    code: sentence === undefined ? 'fault' : (code as StartCode),
    expected: null, // the message says it, and what to type
    got,
    message: sentence === undefined ? code : sentence(quoted),
  };
}

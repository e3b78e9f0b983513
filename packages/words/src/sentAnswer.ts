import type { Refusal, RefusalCode } from '@evenfall/clinical';
import type { Catalogue } from './catalogue.js';
import { MissingFigure } from './figures.js';
import type { Place, Problem } from './problem.js';

/**
 * A problem as a server sends it: in its own words, and with what they are made of. A server of before has no `rule`,
 * `figures` or `choices`.
 */
export type SentProblem = {
  readonly field: string | null;
  readonly line: number | null;
  readonly code: string;
  readonly got: string | null;
  readonly expected: string | null;
  readonly message: string;
  readonly rule?: string;
  readonly figures?: Readonly<Record<string, number>>;
  readonly choices?: readonly string[];
};

/** A refusal as a server sends it (RFC 9457); `code` names its reason, null for no more than the status says. */
export type SentAnswer = {
  readonly status: number;
  readonly title: string;
  readonly detail: string | null;
  readonly code?: string | null;
  readonly problems: readonly SentProblem[];
};

/** Makes a problem of a refusal in the words of one language. */
export type SayProblem = (refusal: Refusal, place?: Place) => Problem;

/**
 * A problem that a server sent, said anew in the words of a catalogue: by its code, its rule and its figures. What this
 * program has no sentence for stays in the server's words.
 */
export function sentProblem(
  sent: SentProblem,
  { messages }: Pick<Catalogue, 'messages'>,
  say: SayProblem,
  place?: Place,
): Pick<Problem, 'expected' | 'message'> {
  const { code, rule, figures = {}, choices = [], field, line, got } = sent;
  if (rule === undefined || !isCode(code, messages)) return sent;
  try {
    return say({ field: field ?? '', line, code, expected: rule, figures, choices, got }, place);
  } catch (fault) {
    if (fault instanceof MissingFigure) return sent;
    throw fault;
  }
}

function isCode(code: string, messages: Catalogue['messages']): code is RefusalCode {
  return Object.hasOwn(messages, code);
}

/** Why a server refused, in the words of a catalogue: what is wrong with each value, else its reason, else its status. */
export function sentAnswer(
  { status, title, detail, code = null, problems }: SentAnswer,
  catalogue: Catalogue,
  say: SayProblem,
  place?: Place,
): string {
  if (problems.length > 0)
    return problems.map((one) => sentProblem(one, catalogue, say, place).message).join(' ');
  const answers: Readonly<Record<string, string>> = catalogue.sections.answers;
  const reason = code !== null && Object.hasOwn(answers, code) ? answers[code] : undefined;
  const byStatus = Object.hasOwn(answers, String(status)) ? answers[String(status)] : undefined;
  return reason ?? detail ?? byStatus ?? title;
}

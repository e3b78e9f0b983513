import { withoutForm } from '../app/forms.js';
import { nameIn } from '../parts/Identity.js';
import { hasContent, type RoundDraft } from '../round/draft.js';
import { takenBy } from '../round/whose.js';
import type { Kept } from '../store/kept.js';
import type { State } from '../store/store.js';

/** A set that somebody typed and did not sign. */
export type UnsignedSet = { readonly person: string; readonly text: string };

/** What somebody leaves behind who measures no more: sets on a keypad, which go, and rounds, which stay theirs. */
export type LeftBehind = { readonly sets: readonly UnsignedSet[]; readonly rounds: readonly string[] };

const SET_FORM = 'quick ';
/** How whoever measured last counts a pulse: theirs alone. */
const HABIT = 'quick habit';

/** The sets that wait on a keypad of this device, typed by whoever is measuring now. */
export function unsignedSets({ forms }: Pick<Kept, 'forms'>): readonly UnsignedSet[] {
  return Object.entries(forms)
    .filter(([form]) => form.startsWith(SET_FORM) && form !== HABIT)
    .map(([form, { fields }]) => {
      const { text = '' } = fields;
      return { person: form.slice(SET_FORM.length), text: text.trim() };
    })
    .filter(({ text }) => text !== '');
}

/**
 * What was typed and measured and not signed, when somebody else measures: nothing where nobody was measuring yet.
 *
 * @param book where somebody signs in the name is chosen for a class alone: nothing beside a bed changes hands then
 */
export function leftBehind(
  kept: Pick<Kept, 'agent' | 'forms' | 'drafts'>,
  agent: string | null,
  book: RoundDraft['book'] | null = null,
): LeftBehind {
  if (kept.agent === null || kept.agent === agent) return { sets: [], rounds: [] };
  const rounds = Object.values(kept.drafts)
    .filter((draft) => draft.by === kept.agent && (book === null || draft.book === book))
    .map(({ person }) => person);
  return { sets: book === null ? unsignedSets(kept) : [], rounds };
}

/**
 * Somebody else measures: what the last one typed is not theirs to sign, so their keypads are blank, and a round that was begun
 * stays whose it is. What was taken before anybody said who they are is of whoever says so first; beside a bed where somebody signs in it is theirs.
 */
export function withAgent(kept: Kept, agent: string | null, book: RoundDraft['book'] | null = null): Kept {
  if (kept.agent === null) return { ...kept, agent, drafts: withTaker(kept.drafts, agent, book) };
  const isOther = kept.agent !== agent && book === null;
  const left = isOther
    ? [HABIT, ...Object.keys(kept.forms).filter((form) => form.startsWith(SET_FORM))].reduce(
        withoutForm,
        kept,
      )
    : kept;
  return { ...left, agent };
}

/** The sets in words, each with its person: those that are given, else all that wait. */
export function setsText(
  { kept, known }: Pick<State, 'kept' | 'known'>,
  sets: readonly UnsignedSet[] = unsignedSets(kept),
): string {
  return sets
    .map(({ person, text }) => {
      const name = nameIn(known.people.value?.find(({ id }) => id === person) ?? null);
      return name === undefined ? text : `${text} (${name})`;
    })
    .join(', ');
}

function withTaker(
  drafts: Kept['drafts'],
  agent: string | null,
  book: RoundDraft['book'] | null,
): Kept['drafts'] {
  const taken = ([person, draft]: [string, RoundDraft]) => {
    const isTheirs = book === null || draft.book === book;
    const isBegun = draft.isIdentityChecked || hasContent(draft);
    return [person, isTheirs && isBegun ? takenBy(draft, agent) : draft] as const;
  };
  return Object.fromEntries(Object.entries(drafts).map(taken));
}

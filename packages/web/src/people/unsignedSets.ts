import { withoutForm } from '../app/forms.js';
import { nameIn } from '../parts/Identity.js';
import type { Kept } from '../store/kept.js';
import type { State } from '../store/store.js';

/** A set that somebody typed and did not sign. */
export type UnsignedSet = { readonly person: string; readonly text: string };

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

/** What is lost when somebody else measures: nothing where nobody was measuring yet. */
export function lostTo(kept: Pick<Kept, 'agent' | 'forms'>, agent: string | null): readonly UnsignedSet[] {
  return kept.agent === null || kept.agent === agent ? [] : unsignedSets(kept);
}

/** Somebody else measures: what the last one typed is not theirs to sign, so their keypads are blank. */
export function withAgent(kept: Kept, agent: string | null): Kept {
  const isOther = kept.agent !== null && kept.agent !== agent;
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

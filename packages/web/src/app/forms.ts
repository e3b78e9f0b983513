import type { Stamp } from '@evenfall/record';
import type { EntryStart, FormDraft, Kept } from '../store/kept.js';
import { type App, useApp, useKept } from './context.js';

export const NO_FORM: FormDraft = { fields: {}, adds: null, entry: null };

export function withField(kept: Kept, form: string, field: string, text: string): Kept {
  const was = kept.forms[form] ?? NO_FORM;
  return withForm(kept, form, { ...was, fields: { ...was.fields, [field]: text } });
}

/** Makes the id of what a form adds, once. */
export function withAdds(kept: Kept, form: string, id: () => string): Kept {
  const was = kept.forms[form] ?? NO_FORM;
  return was.adds === null ? withForm(kept, form, { ...was, adds: id() }) : kept;
}

/** Makes the start of the entry that a form sends, once, and takes this device's next number for it. */
export function withEntry(kept: Kept, form: string, id: () => string, now: () => Stamp): Kept {
  const was = kept.forms[form] ?? NO_FORM;
  if (was.entry !== null) return kept;
  const measuredAt = now();
  const entry = { id: id(), sequence: kept.sequence, measuredAt, writtenAt: measuredAt.at };
  return { ...withForm(kept, form, { ...was, entry }), sequence: kept.sequence + 1 };
}

function withForm(kept: Kept, form: string, draft: FormDraft): Kept {
  return { ...kept, forms: { ...kept.forms, [form]: draft } };
}

export function withoutForm(kept: Kept, form: string): Kept {
  const { [form]: _done, ...forms } = kept.forms;
  return { ...kept, forms };
}

/** Without what was typed for a round that is over: its forms end in its id. */
export function withoutFormsOf(kept: Kept, round: string): Kept {
  const left = Object.entries(kept.forms).filter(([form]) => !form.endsWith(` ${round}`));
  return left.length === Object.keys(kept.forms).length ? kept : { ...kept, forms: Object.fromEntries(left) };
}

type Keeping = Pick<App, 'store' | 'ids' | 'clock'>;

/** The start of the entry that a form sends, by its name: the same each time it is sent. */
export function entryStart({ store, ids, clock }: Keeping, form: string): EntryStart {
  store.change((state) => ({ ...state, kept: withEntry(state.kept, form, ids, clock.stamp) }));
  const { entry } = store.get().kept.forms[form] ?? NO_FORM;
  if (entry === null) throw new Error(`The form ${form} has no entry`);
  return entry;
}

/** Ends a form, by its name. */
export function formDone({ store }: Keeping, form: string): void {
  store.change((state) => ({ ...state, kept: withoutForm(state.kept, form) }));
}

/**
 * A form whose fields outlive a reload and a refusal.
 *
 * @param initial what stands in a field until it is touched
 */
export function useForm(form: string, initial: Readonly<Record<string, string>> = {}) {
  const app = useApp();
  const { store, ids } = app;
  const fields = useKept(({ kept }) => (kept.forms[form] ?? NO_FORM).fields);
  const change = (make: (kept: Kept) => Kept) =>
    store.change((state) => ({ ...state, kept: make(state.kept) }));
  const draft = () => store.get().kept.forms[form] ?? NO_FORM;
  return {
    text: (field: string) => fields[field] ?? initial[field] ?? '',
    set: (field: string, text: string) => change((kept) => withField(kept, form, field, text)),
    /** The id of what it adds: the same each time it is sent. */
    adds(): string {
      change((kept) => withAdds(kept, form, ids));
      return draft().adds ?? '';
    },
    /** The start of the entry it sends: the same each time it is sent. */
    entry: () => entryStart(app, form),
    done: () => formDone(app, form),
  };
}

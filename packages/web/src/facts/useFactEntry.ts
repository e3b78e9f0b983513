import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { reloadRecord } from '../server/load.js';

/** Sends an entry about a person's facts from a form; says whether it was taken, and in words why not. */
export function useFactEntry(person: string, form: ReturnType<typeof useForm>) {
  const app = useApp();
  return useSendEntry(form, person, () => reloadRecord(app, person));
}

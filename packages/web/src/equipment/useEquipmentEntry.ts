import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { loadEquipment } from '../server/loadEquipment.js';

/** Sends an entry about the equipment of the place from a form; says whether it was taken, and in words why not. */
export function useEquipmentEntry(form: ReturnType<typeof useForm>) {
  const app = useApp();
  return useSendEntry(form, null, () => loadEquipment(app));
}

import { afterAsking, know, type Loading } from './load.js';

/** What the place measures with. */
export async function loadEquipment(app: Loading): Promise<void> {
  const answer = await app.server.call('listEquipment', {});
  const unreadable = answer.ok ? answer.value.unreadable : 0;
  know(app, (known) => ({ ...known, equipment: afterAsking(known.equipment, answer, unreadable) }));
}

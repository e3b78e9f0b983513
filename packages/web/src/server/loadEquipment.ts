import { asking } from './asking.js';
import { afterAsking, type Loading } from './load.js';

/** What the place measures with. */
export async function loadEquipment(app: Loading): Promise<void> {
  const tell = asking(app, 'equipment');
  const answer = await app.server.call('listEquipment', {});
  const unreadable = answer.ok ? answer.value.unreadable : 0;
  tell(answer, (known) => ({ ...known, equipment: afterAsking(known.equipment, answer, unreadable) }));
}

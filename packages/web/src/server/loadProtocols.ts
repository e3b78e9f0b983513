import { asking } from './asking.js';
import { afterAsking, type Loading } from './load.js';

/** The protocol versions of the place, and who put which in force when. */
export async function loadPlaceProtocols(app: Loading): Promise<void> {
  const tell = asking(app, 'protocols of the place');
  const [kept, chosen] = await Promise.all([
    app.server.call('listProtocols', {}),
    app.server.call('listProtocolChoices', {}),
  ]);
  const answer = !kept.ok
    ? kept
    : !chosen.ok
      ? chosen
      : { ...chosen, value: { ...chosen.value, protocols: kept.value.protocols } };
  tell(answer, (known) => ({ ...known, placeProtocols: afterAsking(known.placeProtocols, answer) }));
}

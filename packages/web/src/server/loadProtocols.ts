import { afterAsking, know, type Loading } from './load.js';

/** The protocol versions of the place, and who put which in force when. */
export async function loadPlaceProtocols(app: Loading): Promise<void> {
  const [kept, chosen] = await Promise.all([
    app.server.call('listProtocols', {}),
    app.server.call('listProtocolChoices', {}),
  ]);
  const answer = !kept.ok
    ? kept
    : !chosen.ok
      ? chosen
      : { ...chosen, value: { ...chosen.value, protocols: kept.value.protocols } };
  know(app, (known) => ({ ...known, placeProtocols: afterAsking(known.placeProtocols, answer) }));
}

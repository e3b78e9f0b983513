import type { Clock } from '../ports/clock.js';
import type { Server } from '../server/server.js';
import { bestOffset, type ClockOffset, type Exchange } from './clockOffset.js';

/** Exchanges of one measuring: the quickest of so many says most. Source: decision of this project; RFC 5905 keeps 8. */
const EXCHANGES = 8;

/**
 * What brings this device's events to the one clock of the place. That clock says one instant, so that all the time between
 * asking and answer counts as uncertain. Null where the server did not answer.
 */
export async function measureClock(server: Server, clock: Clock): Promise<ClockOffset | null> {
  const exchanges: Exchange[] = [];
  for (let one = 0; one < EXCHANGES; one++) {
    const sentMs = clock.monotonicMs();
    const answer = await server.call('readClock', {});
    const backMs = clock.monotonicMs();
    if (!answer.ok) break;
    const { atMs } = answer.value;
    exchanges.push({ sentMs, receivedMs: atMs, answeredMs: atMs, backMs });
  }
  return bestOffset(exchanges);
}

import type { App } from '../app/context.js';
import { withoutClassPerson } from '../class/forget.js';
import {
  afterSending,
  bookOfWaiting,
  goesOnWith,
  isWorthRepeating,
  pauseMs,
  type Sent,
  toSend,
} from '../round/waiting.js';
import type { WaitingRound } from '../store/kept.js';
import { reloadRecord } from './load.js';
import { loadClassSessions } from './loadClass.js';
import { refusedSigned } from './server.js';

type Sending = Pick<App, 'store' | 'server' | 'words'>;

/**
 * Sends every signed round that waits, and every exercise that is over, oldest first, and keeps on this device those that were
 * not taken. What goes on with one that went unanswered waits behind it: sent first, it would be refused for what is not there
 * yet.
 */
export async function sendWaiting(app: Sending): Promise<void> {
  const unanswered: WaitingRound[] = [];
  for (const waiting of toSend(app.store.get().kept)) {
    if (goesOnWith(waiting, unanswered)) {
      unanswered.push(waiting);
      continue;
    }
    const { round, person, entries } = waiting;
    const { book } = bookOfWaiting(waiting);
    const answer = await app.server.call('addEntries', { body: { entries: [...entries] } });
    // The record comes first, so that a round taken never vanishes from the screen in between; where it does not come the round
    // stays, and is sent once more under its id.
    const read = answer.ok && person !== null ? await reloadRecord(app, person, book) : null;
    const isUnread = read !== null && !read.ok && isWorthRepeating(read.status);
    const sent: Sent = answer.ok
      ? { is: isUnread ? 'unanswered' : 'taken' }
      : isWorthRepeating(answer.status)
        ? { is: 'unanswered' }
        : { is: 'refused', why: refusedSigned(answer, entries, app.words) };
    app.store.change((state) => ({ ...state, kept: afterSending(state.kept, round, sent) }));
    if (sent.is === 'refused' && person !== null && book === 'class')
      await forgetGone(app, person, answer.status);
    if (sent.is === 'unanswered') unanswered.push(waiting);
    // Without a network none will arrive; but one that the server fails on must not hold up the others.
    if ((!answer.ok && answer.offline) || (read !== null && !read.ok && read.offline)) return;
  }
}

/** What was taken out of a class, or a class that was ended, must not stay on this device either. */
async function forgetGone(app: Sending, person: string, status: number): Promise<void> {
  if (status === 404)
    app.store.change((state) => ({ ...state, kept: withoutClassPerson(state.kept, person) }));
  await loadClassSessions(app);
}

/** Calls back a while after a function that starts it again; the browser's own timer, or a test's. */
export type Timer = { readonly after: (ms: number, then: () => void) => () => void };

/** Keeps sending: now, when the network returns, and after longer and longer pauses. Returns the way to stop. */
export function keepSending(
  app: Sending,
  timer: Timer,
): { readonly now: () => Promise<void>; readonly stop: () => void } {
  let stopTimer = () => {};
  let sending: Promise<void> | null = null;
  const now = (): Promise<void> => {
    stopTimer();
    sending ??= sendWaiting(app).finally(() => {
      sending = null;
      plan();
    });
    return sending;
  };
  const plan = () => {
    const ms = pauseMs(app.store.get().kept);
    if (ms !== null) stopTimer = timer.after(ms, () => void now());
  };
  return { now, stop: () => stopTimer() };
}

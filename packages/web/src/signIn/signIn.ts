import type { SignInState } from '@evenfall/api';
import { SIGN_IN_LIMITS } from '@evenfall/record';
import type { Server } from '../server/server.js';
import { type Remembered, type Standing, standingOf, standingRemembered } from './standing.js';

/** Who is signed in on this device, for the whole page. */
export type SignIn = {
  readonly get: () => Standing;
  readonly subscribe: (onChange: () => void) => () => void;
  /** Asks the server who is signed in. Without an answer nothing changes, but that a page which knew nothing opens. */
  readonly ask: () => Promise<void>;
  /** Takes what another page of this device remembered meanwhile, and asks: an old page shows nothing of who left, without network neither. */
  readonly recall: (remembered: Remembered | null) => Promise<void>;
  /** Takes what the server answered to a sign-in, a PIN or a sign-out. */
  readonly heard: (state: SignInState) => void;
  /** The accounts of this device that were closed when the server was last asked. */
  readonly closed: () => readonly string[];
  /**
   * Locks a device that was left alone: its screen at once, without network too; the server is told as soon as it can be.
   * Until then nobody gets in, whatever the server still takes the device for.
   */
  readonly lockAlone: () => Promise<void>;
  /** Locks the device. Answers false where the server was not reached: then it stays as it is. */
  readonly lock: () => Promise<boolean>;
  readonly signOut: () => Promise<boolean>;
};

type Around = {
  readonly server: Server;
  readonly remembered: Remembered | null;
  /** Says whether it was kept. */
  readonly remember: (remembered: Remembered, wholeHours: number) => boolean;
  /** Somebody gave a secret, so the device is in somebody's hands. */
  readonly touched: () => void;
  /** The accounts that this device keeps something of. */
  readonly accountsKept: () => readonly string[];
  /** Takes from the device what closed accounts keep on it, but for rounds that wait to be sent. */
  readonly forgetClosed: (closed: readonly string[]) => void;
  /** Begins the page anew, for somebody else: nothing of who was there before stays in it. */
  readonly begin: () => void;
};

/** As many accounts as one question may name. */
const MOST_ASKED = 50;

export function createSignIn(around: Around): SignIn {
  const { server, remembered, remember, touched, accountsKept, forgetClosed, begin } = around;
  /** Grows with each thing that happened: an answer to a question of before it is of no use. */
  let turn = 0;
  let isUntold = remembered?.isUntold === true;
  /** Of how many hours a device may remember, as the server said last. */
  let wholeHours = SIGN_IN_LIMITS.wholeHours as number;
  let closed: readonly string[] = [];
  const listeners = new Set<() => void>();
  const owner = remembered?.current?.account ?? null;
  let standing = standingRemembered(remembered);
  const become = (next: Standing) => {
    standing = next;
    for (const listener of listeners) listener();
  };
  const heard = (state: SignInState) => {
    turn += 1;
    isUntold = false;
    wholeHours = state.wholeHours;
    const next = standingOf(state);
    // While nobody acts, what this page holds is still that of who did: it is theirs when they come back.
    const isAnother =
      (next.is === 'in' && next.who.account !== owner) || (next.is === 'open' && owner !== null);
    forgetClosed(state.closed);
    // Locked or signed out is remembered too: loaded again without network the page opens to nobody.
    const isKept = remember({ needed: state.needed, current: state.current }, state.wholeHours);
    // What this page holds of an account that is closed would be written down again.
    const isClosed = owner !== null && state.closed.includes(owner);
    if (!isAnother && !isClosed) return become(next);
    if (isKept) return begin();
    // Begun anew, a page that remembers nobody would begin again and again. What somebody left here opens to nobody else.
    become(owner === null ? next : { is: 'out', here: [] });
  };
  const told = async (route: 'lockDevice' | 'signOut') => {
    const answer = await server.call(route, { body: {} });
    if (answer.ok) heard(answer.value);
    return answer.ok;
  };
  /** Tells the server that the device locked itself, before it is asked anything else. */
  const tell = async () => {
    const answer = await server.call('lockDevice', { body: {} });
    // Somebody may have given a PIN meanwhile: then it is theirs.
    if (answer.ok && isUntold) heard(answer.value);
  };
  const ask = async () => {
    if (isUntold) return await tell();
    const asked = turn;
    const kept = accountsKept().slice(0, MOST_ASKED).join(',');
    const answer = await server.call('readSignIn', kept === '' ? {} : { query: { kept } });
    // Somebody signed in, or the device was locked, while the answer was on its way.
    if (turn !== asked) return;
    if (answer.ok) {
      closed = answer.value.closed;
      heard(answer.value);
    } else if (standing.is === 'asking') become({ is: 'open' });
  };
  return {
    get: () => standing,
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    ask,
    closed: () => closed,
    async recall(now) {
      isUntold = now?.isUntold === true;
      if (now?.needed !== true) return await ask();
      if (now.current !== null && now.current.account !== owner) return begin();
      if (now.current === null && standing.is !== 'out') become(standingRemembered(now));
      await ask();
    },
    heard(state) {
      touched();
      heard(state);
    },
    async lockAlone() {
      if (standing.is !== 'in') return;
      const { account, agent, hasPin } = standing.who;
      turn += 1;
      isUntold = true;
      remember({ needed: true, current: null, isUntold }, wholeHours);
      become({ is: 'out', here: [{ account, agent, hasPin }], isUntold });
      await tell();
    },
    lock: () => told('lockDevice'),
    async signOut() {
      const isTold = await told('signOut');
      // Who is locked out comes back to this page; who signed out leaves nothing in it.
      if (isTold && standing.is === 'out') begin();
      return isTold;
    },
  };
}

/** The same server, which asks who is signed in when it refuses because nobody is. */
export function askingAgain(server: Server, ask: () => void): Server {
  return {
    async call(name, takes) {
      const answer = await server.call(name, takes);
      if (!answer.ok && answer.status === 401) ask();
      return answer;
    },
  };
}

import type { SignInState } from '@evenfall/api';
import { expect, test } from 'vitest';
import type { Server } from '../server/server.js';
import { REMEMBERED_KEY, remember, rememberedIn } from './rememberedIn.js';
import { askingAgain, createSignIn } from './signIn.js';
import type { Remembered } from './standing.js';
import { idleStep, LOCK_AFTER_MINUTES } from './watchIdle.js';

const who = (account: string) => ({
  account,
  agent: { id: `agent of ${account}`, name: `${account} (invented)` },
  signIn: account,
  roles: ['clinician' as const],
  isOwnPhrase: true,
  hasPin: true,
});
const state = (more: Partial<SignInState>): SignInState => ({
  needed: true,
  current: null,
  here: [],
  closed: [],
  idleMinutes: 15,
  wholeHours: 12,
  ...more,
});

const KEPT_HERE = ['ada', 'sol'];

/** A page of a device that remembers `remembered`, and a server that answers `answers`, null for no answer. */
function page(remembered: Remembered | null, answers: SignInState | null, keeps = true) {
  const kept: Remembered[] = [];
  const forgotten: string[] = [];
  const asked: object[] = [];
  let begun = 0;
  let touched = 0;
  const server = {
    call: async (_name: string, takes: object) => {
      asked.push(takes);
      return answers === null
        ? { ok: false, status: 0, offline: true, problem: null }
        : { ok: true, status: 200, value: answers };
    },
  } as unknown as Server;
  const signIn = createSignIn({
    server,
    remembered,
    remember: (next) => keeps && kept.push(next) > 0,
    touched: () => {
      touched += 1;
    },
    accountsKept: () => KEPT_HERE,
    forgetClosed: (closed) => forgotten.push(...closed),
    begin: () => {
      begun += 1;
    },
  });
  return { signIn, kept, forgotten, asked, begun: () => begun, touched: () => touched };
}

test('a device that never heard of accounts shows nothing until the server said whether there are any', async () => {
  const open = page(null, state({ needed: false }));
  expect(open.signIn.get()).toEqual({ is: 'asking' });
  await open.signIn.ask();
  expect([open.signIn.get(), open.begun()]).toEqual([{ is: 'open' }, 0]);
  const needed = page(null, state({}));
  await needed.signIn.ask();
  expect(needed.signIn.get()).toEqual({ is: 'out', here: [] });
  // Without a server there is nothing to guard: the page says that it cannot be reached.
  const alone = page(null, null);
  await alone.signIn.ask();
  expect(alone.signIn.get()).toEqual({ is: 'open' });
});

test('without network the page goes on for whoever was signed in', async () => {
  const { signIn } = page({ needed: true, current: who('ada') }, null);
  await signIn.ask();
  expect(signIn.get()).toEqual({ is: 'in', who: who('ada') });
});

test('another account, or none where there was one, begins the page anew; the same one goes on', async () => {
  const same = page({ needed: true, current: who('ada') }, state({ current: who('ada') }));
  await same.signIn.ask();
  expect([same.signIn.get().is, same.begun()]).toEqual(['in', 0]);
  const other = page({ needed: true, current: who('ada') }, state({ current: who('sol') }));
  await other.signIn.ask();
  expect([other.signIn.get(), other.begun(), other.kept.at(-1)?.current?.account]).toEqual([
    { is: 'in', who: who('ada') },
    1,
    'sol',
  ]);
  const first = page(null, state({ current: who('ada') }));
  await first.signIn.ask();
  expect(first.begun()).toBe(1);
  const none = page({ needed: true, current: who('ada') }, state({ needed: false }));
  await none.signIn.ask();
  expect(none.begun()).toBe(1);
});

test('a locked device covers what it holds, and opens to nobody when it is loaded again without network', async () => {
  const here = [{ account: 'ada', agent: who('ada').agent, hasPin: true }];
  const locked = page({ needed: true, current: who('ada') }, state({ here }));
  await locked.signIn.lock();
  expect(locked.signIn.get()).toEqual({ is: 'out', here });
  const again = page(locked.kept.at(-1) ?? null, null);
  await again.signIn.ask();
  expect(again.signIn.get()).toEqual({ is: 'out', here: [] });
  locked.signIn.heard(state({ current: who('ada'), here }));
  expect([locked.signIn.get().is, locked.begun(), locked.kept.at(-1)?.current?.account]).toEqual([
    'in',
    0,
    'ada',
  ]);
  // Whoever signs in on the page that was loaded again gets one that is theirs.
  again.signIn.heard(state({ current: who('ada') }));
  expect(again.begun()).toBe(1);
});

test('an old page shows nothing of who left: covered when locked elsewhere, begun anew for another, without network too', async () => {
  const ada = { needed: true, current: who('ada') };
  const locked = page(ada, null);
  await locked.signIn.recall({ needed: true, current: null });
  expect([locked.signIn.get(), locked.begun()]).toEqual([{ is: 'out', here: [] }, 0]);
  const other = page(ada, null);
  await other.signIn.recall({ needed: true, current: who('sol') });
  expect(other.begun()).toBe(1);
  const same = page(ada, null);
  await same.signIn.recall(ada);
  expect([same.signIn.get().is, same.begun()]).toEqual(['in', 0]);
  const before = page(null, state({ needed: false }));
  await before.signIn.recall(null);
  expect([before.signIn.get().is, before.begun()]).toEqual(['open', 0]);
});

test('a device that keeps nothing does not begin anew without end, and shows nobody what another left', async () => {
  const full = page(null, state({ current: who('ada') }), false);
  await full.signIn.ask();
  expect([full.signIn.get(), full.begun()]).toEqual([{ is: 'in', who: who('ada') }, 0]);
  const others = page({ needed: true, current: who('sol') }, state({ current: who('ada') }), false);
  await others.signIn.ask();
  expect([others.signIn.get(), others.begun()]).toEqual([{ is: 'out', here: [] }, 0]);
});

test('signed out, the page begins anew with nothing of who left; locked, it waits for them; unreachable, it stays', async () => {
  const ada = { needed: true, current: who('ada') };
  const out = page(ada, state({}));
  expect([await out.signIn.signOut(), out.begun()]).toEqual([true, 1]);
  const locked = page(ada, state({}));
  expect([await locked.signIn.lock(), locked.begun()]).toEqual([true, 0]);
  const alone = page(ada, null);
  expect([await alone.signIn.signOut(), alone.signIn.get().is, alone.begun()]).toEqual([false, 'in', 0]);
});

test('a refusal because nobody is signed in makes the page ask who is', async () => {
  let asked = 0;
  const refusing = { call: async () => ({ ok: false, status: 401, offline: false, problem: null }) };
  await askingAgain(refusing as unknown as Server, () => {
    asked += 1;
  }).call('listAgents', {});
  expect(asked).toBe(1);
});

test('what a device remembers is read back, and nothing else is', () => {
  const kept = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
  const remembered = { needed: true, current: who('ada') };
  expect(remember(shelf, remembered, 5_000)).toBe(true);
  expect(rememberedIn(shelf, 4_999)).toEqual(remembered);
  // Longer than a pass phrase lasts nobody is let in on the word of the device alone.
  expect(rememberedIn(shelf, 5_000)).toEqual({ needed: true, current: null });
  const full = {
    ...shelf,
    setItem: () => {
      throw new Error('full');
    },
  };
  expect([remember(full, remembered, 5_000), remember(null, remembered, 5_000)]).toEqual([false, false]);
  for (const text of ['', '{', 'null', '{}', '{"needed":"yes"}']) {
    kept.set(REMEMBERED_KEY, text);
    expect(rememberedIn(shelf, 0), text).toBeNull();
  }
  kept.set(REMEMBERED_KEY, '{"needed":true,"current":{"account":7}}');
  expect(rememberedIn(shelf, 0)).toEqual({ needed: true, current: null });
  expect(rememberedIn(null, 0)).toBeNull();
});

test('a device is locked when nobody touched it for so long, and says that it is used while somebody does', () => {
  const minutes = (count: number) => count * 60_000;
  expect(idleStep(minutes(LOCK_AFTER_MINUTES), 0, 0)).toBe('lock');
  expect(idleStep(minutes(LOCK_AFTER_MINUTES) - 1, 0, 0)).toBe('nothing');
  expect(idleStep(minutes(5), minutes(4), 0)).toBe('say');
  expect(idleStep(minutes(5) - 1, minutes(4), 0)).toBe('nothing');
  // Untouched since it last said so, it does not keep itself open.
  expect(idleStep(minutes(9), minutes(1), minutes(2))).toBe('nothing');
});

// What somebody who left typed or signed must not lie on a device for ever; what no server has is not thrown away.
test('a device asks which accounts it keeps something of are closed, and lets go of what they left', async () => {
  const { signIn, asked, forgotten, begun } = page(
    { needed: true, current: who('ada') },
    state({ current: who('ada'), closed: ['sol'] }),
  );
  await signIn.ask();
  expect(asked).toEqual([{ query: { kept: 'ada,sol' } }]);
  expect([forgotten, signIn.closed(), begun()]).toEqual([['sol'], ['sol'], 0]);
});

test('whoever is closed while they work loses the page, which would write it all down again', async () => {
  const { signIn, kept, forgotten, begun } = page(
    { needed: true, current: who('ada') },
    state({ closed: ['ada'] }),
  );
  await signIn.ask();
  expect([forgotten, begun(), kept.at(-1)]).toEqual([['ada'], 1, { needed: true, current: null }]);
  // Locked alone, the page stays as it is for whoever comes back.
  const locked = page({ needed: true, current: who('ada') }, state({}));
  await locked.signIn.ask();
  expect([locked.begun(), locked.signIn.get().is]).toEqual([0, 'out']);
});

/** A device that remembers `remembered`, and a server that is there or not and still takes the device for ada's. */
function alone(remembered: Remembered) {
  const kept: Remembered[] = [];
  const asked: string[] = [];
  const world = { isThere: false };
  const server = {
    call: async (name: string) => {
      asked.push(name);
      const value = name === 'lockDevice' ? state({ here: [who('ada')] }) : state({ current: who('ada') });
      return world.isThere
        ? { ok: true, status: 200, value }
        : { ok: false, status: 0, offline: true, problem: null };
    },
  } as unknown as Server;
  const signIn = createSignIn({
    server,
    remembered,
    remember: (next) => kept.push(next) > 0,
    touched: () => undefined,
    accountsKept: () => [],
    forgetClosed: () => undefined,
    begin: () => undefined,
  });
  return { signIn, kept, asked, world };
}
const ADA_IN: Remembered = { needed: true, current: who('ada') };

// docs/hazards.md H12: a device that is left alone without network.
test('left alone without network the screen locks at once, and nobody gets in until the server was told', async () => {
  const { signIn, kept, asked, world } = alone(ADA_IN);
  await signIn.lockAlone();
  expect(signIn.get()).toEqual({
    is: 'out',
    here: [{ account: 'ada', agent: who('ada').agent, hasPin: true }],
    isUntold: true,
  });
  expect(kept).toEqual([{ needed: true, current: null, isUntold: true }]);
  await signIn.ask();
  expect(signIn.get()).toMatchObject({ is: 'out', isUntold: true });
  // The network is back: the server, which took the device for ada's, is told before it is asked.
  world.isThere = true;
  await signIn.ask();
  expect(signIn.get()).toEqual({ is: 'out', here: [who('ada')] });
  expect(kept.at(-1)).toEqual({ needed: true, current: null });
  expect(asked).toEqual(['lockDevice', 'lockDevice', 'lockDevice']);
  signIn.heard(state({ current: who('ada') }));
  expect(signIn.get()).toEqual({ is: 'in', who: who('ada') });
});

test('loaded again it is still locked, and tells the server then', async () => {
  const { signIn, asked, world } = alone({ needed: true, current: null, isUntold: true });
  expect(signIn.get()).toEqual({ is: 'out', here: [], isUntold: true });
  world.isThere = true;
  await signIn.ask();
  expect([signIn.get().is, asked]).toEqual(['out', ['lockDevice']]);
});

test('an answer from before the lock does not open it, and other pages of the device lock too', async () => {
  const { signIn, world } = alone(ADA_IN);
  world.isThere = true;
  const late = signIn.ask();
  await signIn.lockAlone();
  await late;
  expect(signIn.get().is).toBe('out');
  const other = alone(ADA_IN);
  await other.signIn.recall({ needed: true, current: null, isUntold: true });
  expect([other.signIn.get().is, other.asked]).toEqual(['out', ['lockDevice']]);
});

test('that a device locked itself outlives the page', () => {
  const texts: Record<string, string> = {};
  const shelf = {
    getItem: (key: string) => texts[key] ?? null,
    setItem: (key: string, text: string) => {
      texts[key] = text;
    },
  };
  remember(shelf, { needed: true, current: null, isUntold: true }, 0);
  expect(rememberedIn(shelf, 1)).toEqual({ needed: true, current: null, isUntold: true });
  remember(shelf, { needed: true, current: null }, 0);
  expect(rememberedIn(shelf, 1)).toEqual({ needed: true, current: null });
});

import { expect, test, vi } from 'vitest';
import { createStore, SHELF_KEY, type Shelf } from './store.js';

function shelfOf(texts: Record<string, string> = {}): Shelf & { texts: Record<string, string> } {
  return {
    texts,
    getItem: (key) => texts[key] ?? null,
    setItem: (key, text) => {
      texts[key] = text;
    },
  };
}
const chooses = (agent: string) => (state: ReturnType<ReturnType<typeof createStore>['get']>) => ({
  ...state,
  kept: { ...state.kept, agent },
});

test('a reload finds what was changed, and the same device', () => {
  const shelf = shelfOf();
  const store = createStore(shelf, () => 'device-1');
  store.change(chooses('ana'));
  const reloaded = createStore(shelf, () => 'device-2');
  expect(reloaded.get().kept).toMatchObject({ agent: 'ana', device: 'device-1' });
});

test('a change is on the shelf before anybody hears of it', () => {
  const shelf = shelfOf();
  const store = createStore(shelf, () => 'device-1');
  let onShelf = '';
  store.subscribe(() => {
    onShelf = shelf.texts[SHELF_KEY] ?? '';
  });
  store.change(chooses('ana'));
  expect(JSON.parse(onShelf).agent).toBe('ana');
});

test('two tabs of one device do not undo each other', () => {
  const shelf = shelfOf();
  const one = createStore(shelf, () => 'device-1');
  const two = createStore(shelf, () => 'device-2');
  one.change(chooses('ana'));
  two.change((state) => ({ ...state, kept: { ...state.kept, sequence: state.kept.sequence + 1 } }));
  one.reread();
  expect(one.get().kept).toMatchObject({ agent: 'ana', sequence: 1, device: 'device-1' });
});

test.each([
  ['damaged text', '{"version":1,'],
  ['a newer version', '{"version":4,"device":"d","waiting":["a signed round"]}'],
])('%s is put aside unread, never overwritten', (_what, text) => {
  const shelf = shelfOf({ [SHELF_KEY]: text });
  const store = createStore(shelf, () => 'device-1');
  store.change(chooses('ana'));
  expect(shelf.texts[`${SHELF_KEY}.unread`]).toBe(text);
  expect(store.get().kept.agent).toBe('ana');
});

test('a browser that refuses to keep anything is said so, and the page goes on', () => {
  const refusing: Shelf = {
    getItem: () => null,
    setItem: () => {
      throw new Error('quota');
    },
  };
  const heard = vi.fn();
  for (const shelf of [refusing, null]) {
    const store = createStore(shelf, () => 'device-1');
    store.subscribe(heard);
    store.change(chooses('ana'));
    store.change(chooses('ben'));
    expect(store.get()).toMatchObject({ isKeeping: false, kept: { agent: 'ben' } });
  }
  expect(heard).toHaveBeenCalledTimes(4);
});

test('nobody is told of a change that changed nothing', () => {
  const store = createStore(shelfOf(), () => 'device-1');
  const heard = vi.fn();
  store.subscribe(heard);
  store.change((state) => state);
  expect(heard).not.toHaveBeenCalled();
});

/** A shelf that takes nothing longer than `most`: a browser that is full. */
function fullShelf() {
  const shelf = { ...shelfOf(), most: Number.POSITIVE_INFINITY };
  const setItem = (key: string, text: string) => {
    if (text.length > shelf.most) throw new Error('quota');
    shelf.texts[key] = text;
  };
  return Object.assign(shelf, { setItem });
}
const signs = (round: string) => (state: ReturnType<ReturnType<typeof createStore>['get']>) => ({
  ...state,
  kept: { ...state.kept, waiting: [...state.kept.waiting, { round, entries: [] } as never] },
});
const roundsIn = (store: ReturnType<typeof createStore>) =>
  store.get().kept.waiting.map(({ round }) => round);

test('a round that a full browser did not take is lost neither by another tab nor by the next change, and is kept when there is room', () => {
  const shelf = fullShelf();
  const one = createStore(shelf, () => 'device-1');
  const two = createStore(shelf, () => 'device-1');
  shelf.most = shelf.texts[SHELF_KEY]?.length ?? 0;
  one.change(signs('signed-while-full'));
  expect([one.get().isKeeping, roundsIn(one)]).toEqual([false, ['signed-while-full']]);
  // Another tab frees room and signs a round of its own; this one hears of it.
  shelf.most = Number.POSITIVE_INFINITY;
  two.change(signs('of-another-tab'));
  one.reread();
  expect(roundsIn(one)).toEqual(['of-another-tab', 'signed-while-full']);
  one.change(chooses('ana'));
  expect(one.get().isKeeping).toBe(true);
  two.reread();
  expect(roundsIn(two)).toEqual(['of-another-tab', 'signed-while-full']);
  expect(roundsIn(createStore(shelf, () => 'device-3'))).toEqual(['of-another-tab', 'signed-while-full']);
});

test('what cannot be read and cannot be put aside, since the browser is full, stays where it is', () => {
  const newer = `{"version":4,"device":"d","waiting":["${'a signed round '.repeat(100)}"]}`;
  const shelf = fullShelf();
  shelf.texts[SHELF_KEY] = newer;
  let isFull = true;
  const refusesAside: Shelf = {
    getItem: shelf.getItem,
    // Nothing more fits beside it; in its place would fit what is shorter.
    setItem: (key, text) => {
      if (isFull && key !== SHELF_KEY) throw new Error('quota');
      shelf.setItem(key, text);
    },
  };
  const store = createStore(refusesAside, () => 'device-1');
  store.change(signs('signed-meanwhile'));
  expect(shelf.texts[SHELF_KEY]).toBe(newer);
  expect([store.get().isKeeping, roundsIn(store)]).toEqual([false, ['signed-meanwhile']]);
  // Room again: what was there goes aside, and what this page has is kept.
  isFull = false;
  store.change(chooses('ana'));
  expect(shelf.texts[`${SHELF_KEY}.unread`]).toBe(newer);
  expect(roundsIn(createStore(shelf, () => 'device-2'))).toEqual(['signed-meanwhile']);
});

test('what was put aside before is not overwritten by what is put aside next', () => {
  const shelf = shelfOf({ [SHELF_KEY]: '{"version":4,"first"' });
  createStore(shelf, () => 'device-1');
  shelf.texts[SHELF_KEY] = '{"version":4,"second"';
  createStore(shelf, () => 'device-1');
  const aside = Object.entries(shelf.texts).filter(([key]) => key !== SHELF_KEY);
  expect(aside.map(([, text]) => text).sort()).toEqual(['{"version":4,"first"', '{"version":4,"second"']);
});

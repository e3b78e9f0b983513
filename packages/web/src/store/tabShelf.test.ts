import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { begunRound } from '../round/draft.js';
import type { Known } from './known.js';
import { createStore } from './store.js';
import { keepTab, knownInTab, TAB_KEY } from './tabShelf.js';

const AT = { at: '2026-11-25T10:00:00+00:00', zone: 'Etc/UTC', asEntered: null };

function shelf() {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
    removeItem: (key: string) => void texts.delete(key),
  };
}

/** A store that knows two people, one of whom has a round under way. */
function ward(tab: ReturnType<typeof shelf>) {
  const store = createStore(null, () => 'device');
  keepTab(store, tab);
  const record = (name: string) =>
    ({ is: 'here', value: { identity: { name } } }) as unknown as Known['records'][string];
  store.change((state) => ({
    kept: state.kept,
    isKeeping: true,
    known: {
      ...state.known,
      inForce: { is: 'here', value: NOTHING_CHOSEN },
      records: { 'care hester': record('Hester Quillfeather'), 'care ansel': record('Ansel Brook') },
    },
  }));
  const draft = begunRound('hester', { round: 'round', signing: 'signing', begunAt: AT });
  const underWay = (drafts: Record<string, typeof draft>) =>
    store.change((state) => ({ ...state, kept: { ...state.kept, drafts } }));
  const waits = (isIt: boolean) => {
    const waiting = isIt
      ? [{ round: 'round', person: 'hester', entries: [], draft, tries: 1, refused: null }]
      : [];
    store.change((state) => ({ ...state, kept: { ...state.kept, waiting } }));
  };
  return { begin: () => underWay({ hester: draft }), end: () => underWay({}), waits };
}

test('without a round under way nothing of anybody is on the tab’s shelf', () => {
  const tab = shelf();
  const { begin, end } = ward(tab);
  expect(tab.texts.size).toBe(0);
  begin();
  expect(tab.texts.size).toBe(1);
  end();
  expect(tab.texts.size).toBe(0);
});

test('after a reload who is measured and the rules are there, as they were, and nobody else is', () => {
  const tab = shelf();
  ward(tab).begin();
  const known = knownInTab(tab);
  expect(known.inForce).toEqual({ is: 'here', value: NOTHING_CHOSEN });
  expect(known.records['care hester']?.value?.identity?.name).toBe('Hester Quillfeather');
  expect(tab.texts.get(TAB_KEY)).not.toContain('Ansel Brook');
});

test('what cannot be read, or a shelf that refuses, is as if there were none', () => {
  const tab = shelf();
  tab.setItem(TAB_KEY, '{"about":');
  expect(knownInTab(tab).inForce.is).toBe('asked');
  const full = {
    ...shelf(),
    setItem: () => {
      throw new Error('QuotaExceededError');
    },
  };
  ward(full).begin();
  expect(knownInTab(full).inForce.is).toBe('asked');
});

test('who was signed for stays known while it waits, and goes from the tab once it was sent', () => {
  const tab = shelf();
  const { waits } = ward(tab);
  waits(true);
  expect(knownInTab(tab).records['care hester']?.value?.identity?.name).toBe('Hester Quillfeather');
  expect(tab.texts.get(TAB_KEY)).not.toContain('Ansel Brook');
  waits(false);
  expect(tab.texts.size).toBe(0);
});

import { expect, test, vi } from 'vitest';
import type { TabShelf } from '../store/tabShelf.js';
import { createCover, isPlainKey } from './cover.js';

function shelfOf(): TabShelf {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, text) => void kept.set(key, text),
    removeItem: (key) => void kept.delete(key),
  };
}

test('a cover outlives a reload of its tab, and is of no other tab', () => {
  const shelf = shelfOf();
  createCover(shelf).set(true);
  expect(createCover(shelf).isOn()).toBe(true);
  expect(createCover(shelfOf()).isOn()).toBe(false);
  createCover(shelf).set(false);
  expect(createCover(shelf).isOn()).toBe(false);
});

test('whoever listens is told of a change, and of nothing else', () => {
  const cover = createCover(null);
  const told = vi.fn();
  const stop = cover.subscribe(told);
  cover.set(false);
  expect(told).not.toHaveBeenCalled();
  cover.set(true);
  expect(told).toHaveBeenCalledTimes(1);
  stop();
  cover.set(false);
  expect(told).toHaveBeenCalledTimes(1);
});

test('a shelf that refuses covers all the same', () => {
  const refuse = () => {
    throw new Error('full');
  };
  const cover = createCover({ getItem: refuse, setItem: refuse, removeItem: refuse });
  cover.set(true);
  expect(cover.isOn()).toBe(true);
});

test('a modifier alone, or a key of the system, is no key press of the page', () => {
  const key = (name: string, more = {}) =>
    isPlainKey({ key: name, ctrlKey: false, altKey: false, metaKey: false, ...more });
  expect(['a', ' ', 'Escape', 'Tab', 'PageDown', 'b'].map((name) => key(name))).toEqual(Array(6).fill(true));
  expect(['Shift', 'Control', 'Alt', 'Meta'].map((name) => key(name))).toEqual(Array(4).fill(false));
  expect(key('Tab', { altKey: true })).toBe(false);
});

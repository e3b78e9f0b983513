import { expect, test } from 'vitest';
import { isKeyWanted, type KeyPlace, takesLetters } from './keyWanted.js';
import { hasLetterKeys, keepLetterKeys } from './letterKeys.js';

const INSIDE: KeyPlace = { isInside: true, control: 'none', isWriting: false, hasLetters: true };

// WCAG 2.2, success criterion 2.1.4: a single letter is active only on focus, or can be turned off.
test.each(['r', 'R', 'm', 'f', 'p', 't', 'n', 'é', '5', '.'])(
  '%s does nothing outside the room, nor anywhere once letters are off',
  (key) => {
    expect(isKeyWanted(key, INSIDE)).toBe(true);
    expect(isKeyWanted(key, { ...INSIDE, control: 'button' })).toBe(true);
    expect(isKeyWanted(key, { ...INSIDE, isInside: false })).toBe(false);
    expect(isKeyWanted(key, { ...INSIDE, hasLetters: false })).toBe(false);
    expect(isKeyWanted(key, { ...INSIDE, isWriting: true })).toBe(false);
  },
);

test.each([' ', 'ArrowLeft', 'ArrowRight', 'Home'])(
  '“%s” is no letter and works all over the page',
  (key) => {
    expect(isKeyWanted(key, { ...INSIDE, isInside: false, hasLetters: false })).toBe(true);
  },
);

test('space and enter belong to the control that has the focus, arrows to all but a button', () => {
  for (const key of [' ', 'Enter']) {
    expect(isKeyWanted(key, { ...INSIDE, control: 'button' })).toBe(false);
    expect(isKeyWanted(key, { ...INSIDE, control: 'other' })).toBe(false);
  }
  expect(isKeyWanted('ArrowLeft', { ...INSIDE, control: 'button' })).toBe(true);
  expect(isKeyWanted('ArrowLeft', { ...INSIDE, control: 'other' })).toBe(false);
});

test('a list takes the letters that find an option in it, as a field takes what is written', () => {
  const focused = (tag: string, type: string | null = null, role: string | null = null) =>
    takesLetters({ tag, type, role });
  expect(focused('SELECT')).toBe(true);
  expect(focused('TEXTAREA')).toBe(true);
  expect(focused('BUTTON', 'button', 'combobox')).toBe(true);
  expect(['text', 'range', 'number'].every((type) => focused('INPUT', type))).toBe(true);
  expect(['radio', 'checkbox'].some((type) => focused('INPUT', type))).toBe(false);
  expect(focused('BUTTON', 'button')).toBe(false);
  expect(focused('DIV')).toBe(false);
});

test('letters are on until they are turned off, and stay off', () => {
  const kept = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
  expect(hasLetterKeys(shelf)).toBe(true);
  keepLetterKeys(shelf, false);
  expect(hasLetterKeys(shelf)).toBe(false);
  keepLetterKeys(shelf, true);
  expect(hasLetterKeys(shelf)).toBe(true);
  expect(hasLetterKeys(null)).toBe(true);
});

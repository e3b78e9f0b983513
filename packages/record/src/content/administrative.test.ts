import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { frame, placesOf } from '../testing/work.js';
import type { KindName } from './kinds.js';

const places = (kind: KindName, content: object) => placesOf(readEntry(frame(kind, content)));

describe('an entry about a person or a place', () => {
  // Bedside handbook 3.18: at least two identifiers.
  test('a person exists with two identifiers or more, named and never told', () => {
    expect(places('person', { identifiers: ['name', 'birthDate'] })).toEqual([]);
    expect(places('person', { identifiers: ['name'] })).toEqual(['/content/identifiers']);
    expect(places('person', { identifiers: ['name', 'bed'] })).toEqual(['/content/identifiers/1']);
    expect(places('person', { identifiers: ['name', 'number'], name: 'Peg' })).toEqual(['/content/name']);
  });

  test('a person of the class book exists by a pseudonym and nothing else, in schema 2', () => {
    const read = (identifiers: string[], more: object) =>
      placesOf(readEntry(frame('person', { identifiers }, { schema: 2, book: 'class', ...more })));
    expect(read(['pseudonym'], {})).toEqual([]);
    expect(read(['pseudonym'], { schema: 1 })).toEqual(['/content/identifiers/0', '/content/identifiers']);
    expect(read(['pseudonym'], { book: 'care' })).toEqual(['/content/identifiers']);
    expect(read(['pseudonym'], { book: 'simulated' })).toEqual(['/content/identifiers']);
    expect(read(['pseudonym', 'birthDate'], {})).toEqual(['/content/identifiers']);
    expect(read(['name', 'number'], { book: 'care' })).toEqual([]);
    expect(read(['name'], { book: 'care' })).toEqual(['/content/identifiers']);
    expect(read([], {})).toEqual(['/content/identifiers']);
  });

  test('a correction says which parts changed, never to what', () => {
    expect(places('identity-corrected', { changed: ['birthDate'] })).toEqual([]);
    expect(places('identity-corrected', { changed: [] })).toEqual(['/content/changed']);
    expect(places('identity-corrected', { changed: ['name'], name: 'Peg' })).toEqual(['/content/name']);
  });

  test('an erasure says why', () => {
    expect(places('identity-erased', { reason: 'asked' })).toEqual([]);
    expect(places('identity-erased', { reason: '' })).toEqual(['/content/reason']);
  });

  test('an error may have a note', () => {
    expect(places('entered-in-error', { note: 'other bed' })).toEqual([]);
    expect(places('entered-in-error', {})).toEqual(['/content/note']);
  });

  test('a protocol is chosen, or none', () => {
    expect(places('protocol-chosen', { version: 'ab'.repeat(32) })).toEqual([]);
    expect(places('protocol-chosen', { version: null })).toEqual([]);
    expect(places('protocol-chosen', {})).toEqual(['/content/version']);
  });
});

import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import type { Known } from './known.js';
import { keepPlace, PLACE_KEY, placeKnown } from './placeShelf.js';
import { createStore } from './store.js';

function shelf() {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
  };
}

const about = (invented: boolean) =>
  ({ is: 'here', value: { site: { invented } } }) as unknown as Known['about'];

test('an invented clinic stays marked, and its rules stay known, when the page is loaded again without network', () => {
  const device = shelf();
  const store = createStore(null, () => 'device');
  keepPlace(store, device);
  expect(device.texts.size).toBe(0);
  store.change((state) => ({
    ...state,
    known: {
      ...state.known,
      about: about(true),
      inForce: { is: 'here', value: NOTHING_CHOSEN },
      records: {
        'care a': {
          is: 'here',
          value: { identity: { name: 'Ansel' } },
        } as unknown as Known['records'][string],
      },
    },
  }));
  const known = placeKnown(device);
  expect(known.about.value?.site.invented).toBe(true);
  expect(known.inForce).toEqual({ is: 'here', value: NOTHING_CHOSEN });
  expect(device.texts.get(PLACE_KEY)).not.toContain('Ansel');
  store.change((state) => ({ ...state, known: { ...state.known, about: about(false) } }));
  expect(placeKnown(device).about.value?.site.invented).toBe(false);
});

test('what cannot be read, or is not there, is as if nothing was heard', () => {
  const device = shelf();
  expect(placeKnown(device).about.is).toBe('asked');
  for (const text of ['{', 'null', '{"about":{}}', '{"about":{"site":{"invented":"yes"}}}']) {
    device.setItem(PLACE_KEY, text);
    expect(placeKnown(device).about.is).toBe('asked');
  }
  expect(placeKnown(null).inForce.is).toBe('asked');
});

import type { CountOf, PulseSite, RefusalCode, Rhythm } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import type { Catalogue } from './catalogue.js';
import { english } from './english/index.js';
import { everyText } from './everyText.js';
import { sayIn } from './say.js';

const say = sayIn('en');

describe.each([0, 1, 2, 7.5, 1234])('every text, said of %d', (number) => {
  const texts = everyText(english, number, say);

  test('says something, and nothing that is not there', () => {
    expect(texts.length).toBeGreaterThan(100);
    for (const [key, text] of texts) {
      expect(text, key).not.toBe('');
      expect(text, key).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
    }
  });

  test('counts nouns rightly', () => {
    for (const [key, text] of texts) {
      expect(text, key).not.toMatch(/\b1 (beats|breaths|taps|intervals|seconds)\b/);
      if (number !== 1) expect(text, key).not.toMatch(/\d (beat|breath|tap|interval|second)\b/);
    }
  });

  test('names no arrhythmia and makes no diagnosis', () => {
    // DESIGN section 2, principle 8; bedside handbook 1.11, 1.12 and 7.5.
    const names =
      /fibrillation|flutter|arrhythmia|dysrhythmia|bigemin|trigemin|ectop|extrasystol|tachycardia|bradycardia|heart block|\bAF\b|\bsinus\b|\bnormal pulse\b|suffers from/i;
    for (const [key, text] of texts) {
      expect(text, key).not.toMatch(names);
      expect(text.replace('does not diagnose', ''), key).not.toMatch(/diagnos/i);
    }
  });
});

test('every id that counting and tapping use has a title', () => {
  // The compiler holds these; the test keeps them in the build.
  english.titles.rhythm satisfies Record<Rhythm, string>;
  english.titles.site satisfies Record<PulseSite, string>;
  english.titles.of satisfies Record<CountOf, string>;
  english.messages satisfies Record<RefusalCode, unknown>;
  expect(new Set(Object.values(english.titles.rhythm)).size).toBe(6);
});

test('a second language does not compile until it says everything', () => {
  const { app: _app, ...withoutApp } = english.sections;
  // @ts-expect-error a section is missing
  const lacking: Catalogue = { ...english, sections: withoutApp };
  const { pulse: _pulse, ...withoutPulse } = english.sections.app;
  // @ts-expect-error one key is missing
  const lackingOne: Catalogue = { ...english, sections: { ...english.sections, app: withoutPulse } };
  const reworded: Catalogue = { ...english, sections: { ...english.sections, app: { ...english.sections.app, pulse: 'Pulso' } } }; // biome-ignore format: one thought
  expect([lacking, lackingOne, reworded]).toHaveLength(3);
});

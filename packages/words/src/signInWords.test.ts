import { SIGN_IN_LIMITS } from '@evenfall/record';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { sayIn } from './say.js';
import { spanish } from './spanish/index.js';

// The limits are kept once, by the package `record`; a sentence that writes one again would outlive a change of it.
describe.each([
  ['en', english],
  ['es', spanish],
] as const)('signing in, said in %s', (locale, { sections }) => {
  const say = sayIn(locale);
  const { wrongPin, phraseHint, pinWhy, pinHint } = sections.signIn;
  const said = (limits: { readonly [Key in keyof typeof SIGN_IN_LIMITS]: number }) => [
    wrongPin(limits, say),
    phraseHint(limits, say),
    pinWhy(limits, say),
    pinHint(limits, say),
    sections.commandLine.newPassPhrase(limits, say),
  ];
  const numbersIn = (text: string) => (text.replace('1234', '').match(/\d+/g) ?? []).map(Number);

  test('each sentence says the limits that it is given, and no other number', () => {
    const { phraseAtLeast, pinAtLeast, pinAtMost, wrongPinsAtMost, wholeHours } = SIGN_IN_LIMITS;
    expect(said(SIGN_IN_LIMITS).map(numbersIn)).toEqual([
      [wrongPinsAtMost],
      [phraseAtLeast],
      [wholeHours],
      [pinAtLeast, pinAtMost],
      [phraseAtLeast],
    ]);
    const other = { ...SIGN_IN_LIMITS, phraseAtLeast: 21, pinAtLeast: 6, pinAtMost: 9, wrongPinsAtMost: 3 };
    expect(said({ ...other, wholeHours: 8 }).map(numbersIn)).toEqual([[3], [21], [8], [6, 9], [21]]);
  });

  test('no sentence that takes no figure writes one', () => {
    const texts = Object.values(sections.signIn).filter((text) => typeof text === 'string');
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.filter((text) => /\d|\bfive\b|\btwelve\b|\bcinco\b|\bdoce\b/.test(text))).toEqual([]);
  });
});

import { NO_ROUND_FACTS, ROUND_RULES, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { valueOfRound } from '../content/chartRound.js';
import type { Entry } from '../entry/entry.js';
import { frame, idOf, NO_PROTOCOL, runContent, signingContent, USUAL_PLACE } from '../testing/work.js';
import { recomputeRound } from './recomputeRound.js';

const round = idOf(600);

/** A reading by ear of a child of six, lying or on the feet. */
function taken(id: number, posture: 'lie' | 'stand', systolic: number, diastolic: number): Entry {
  const circumstances = { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: posture === 'stand' ? 3 : null };
  const moments = [
    { what: 'first sound', mmHg: systolic },
    { what: 'last sound', mmHg: diastolic },
  ];
  const place = { ...USUAL_PLACE, posture };
  const content = runContent({ method: 'auscultation', moments }, { place, circumstances });
  return frame('run', content, { id: idOf(id), sequence: id, round }) as unknown as Entry;
}

const entries = [taken(1, 'lie', 96, 60), taken(2, 'stand', 86, 56)];
const facts = { ...NO_ROUND_FACTS, ageMonths: 75, arms: [] };
const content = signingContent(
  [{ sign: 'pressure', entries: entries.map(({ id }) => id) }],
  entries as never,
  {
    facts,
  },
);

/** The round as it was kept under a rule, with what that rule made of it, or with what another one did. */
function keptUnder(rule: (typeof ROUND_RULES)[number], madeUnder = rule): Entry {
  const { signs, evidence, computedBy } = content;
  if (evidence === null || computedBy === null) throw new Error('a round has evidence');
  const value = valueOfRound(signs, evidence, entries, NO_PROTOCOL, madeUnder);
  const kept = { ...content, value, computedBy: { ...computedBy, rule } };
  return frame('round', kept, { id: idOf(90), sequence: 90, round, schema: 4 }) as unknown as Entry;
}

// Bedside handbook 3.17: a child of six is low under 82 (70 + 2 x 6), an adult on the feet under 90 (3.14).
test('a child on its feet is judged by its own limit; what was kept under an older rule is made again by that', () => {
  const lowIn = (rule: (typeof ROUND_RULES)[number]) => {
    const { content: made } = keptUnder(rule) as Entry & { readonly kind: 'round' };
    return made.value?.standing?.flags.some(({ code }) => code === 'standing-systolic-low');
  };
  expect(ROUND_RULES.map(lowIn)).toEqual([true, true, false, false, false, false]);
  for (const rule of ROUND_RULES)
    expect(recomputeRound(keptUnder(rule), entries, () => NO_PROTOCOL)).toEqual({ state: 'same' });
  expect(recomputeRound(keptUnder('round-3', 'round-2'), entries, () => NO_PROTOCOL)).toMatchObject({
    state: 'differs',
  });
});

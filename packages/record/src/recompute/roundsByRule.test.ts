import { readFileSync } from 'node:fs';
import { type Protocol, ROUND_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { type InForce, inForceUnder, NOTHING_CHOSEN } from '../content/inForce.js';
import type { Entry } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { recomputeRound } from './recomputeRound.js';

type RoundLine = {
  readonly line: 'round';
  readonly what: string;
  readonly entries: readonly unknown[];
  /** The entry that signs it, without what was made of it. */
  readonly signing: { readonly content: object };
  readonly computedBy: object;
  /** What each version of the rule made of it, by its id: frozen, and never made anew. */
  readonly values: Readonly<Record<string, object>>;
};
type Line = RoundLine | { readonly line: 'protocol'; readonly version: string; readonly protocol: Protocol };

const LINES = readFileSync(new URL('../../fixtures/rounds-by-rule.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((text): Line => JSON.parse(text));
const ROUNDS = LINES.filter((line): line is RoundLine => line.line === 'round');

function inForce(version: string | null): InForce | null {
  if (version === null) return NOTHING_CHOSEN;
  const found = LINES.find((one) => one.line === 'protocol' && one.version === version);
  return found?.line === 'protocol' ? inForceUnder(found.protocol, version) : null;
}

function read(raw: unknown): Entry {
  const found = readEntry(raw);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

/** The round as a record has it that was signed under a rule, with the value of that rule or of another one. */
function keptUnder({ signing, computedBy, values }: RoundLine, rule: string, madeUnder = rule): Entry {
  const value = values[madeUnder];
  return read({ ...signing, content: { ...signing.content, value, computedBy: { ...computedBy, rule } } });
}

test.each(ROUNDS.map((one) => [one.what, one] as const))(
  'kept under any version of the rule it is made again as it was: %s',
  (_what, one) => {
    const entries = one.entries.map(read);
    for (const rule of ROUND_RULES)
      expect([rule, recomputeRound(keptUnder(one, rule), entries, inForce)]).toEqual([
        rule,
        { state: 'same' },
      ]);
  },
);

test('each version makes something otherwise of one of them than the version before', () => {
  for (const [at, rule] of ROUND_RULES.entries()) {
    const before = ROUND_RULES[at - 1];
    if (before === undefined) continue;
    const found = ROUNDS.map((one) =>
      recomputeRound(keptUnder(one, rule, before), one.entries.map(read), inForce),
    );
    expect([rule, found.some(({ state }) => state === 'differs')]).toEqual([rule, true]);
  }
});

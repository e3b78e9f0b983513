import { DEFAULT_PLAN_RULES } from '@evenfall/clinical';
import { beginningText, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { usualBeginning, withBeginning } from './beginning.js';
import { withValue } from './draft.js';
import { roundContent, valueEntriesOf } from './entries.js';
import { standingOf } from './standing.js';
import { AGENT, AT, begun, counted, DEVICE, NO_PROTOCOL, NOTHING_BEFORE } from './testing.js';

const words = wordsFor('en');
const UNDER = { facts: NOTHING_BEFORE, inForce: NO_PROTOCOL, program: 'test' };
const IDENTITY = { name: 'Ada Test', birthDate: '1970-01-31', number: null, notes: null };
const USUAL = usualBeginning(IDENTITY as never);
const DECLINED = { ...USUAL, consent: 'declined' } as const;

function started(draft: ReturnType<typeof begun>, how: typeof USUAL) {
  return withBeginning(draft, how, standingOf(draft, UNDER).state, NO_PROTOCOL);
}

test('the usual is two identifiers, agreed, nobody else (bedside handbook 3.18)', () => {
  expect(USUAL.identifiers).toEqual(['name', 'birth-date']);
  expect(beginningText(USUAL, words)).toBe('Identified by name, birth date · agreed');
  const others = {
    ...USUAL,
    chaperone: 'present',
    interpreter: 'offered-declined',
    who: 'Sister Amadi',
  } as const;
  expect(beginningText(others, words)).toBe(
    'Identified by name, birth date · agreed · chaperone present · interpreter offered, declined · Sister Amadi',
  );
});

test('who agreed has nothing declined, and the chart keeps how it began', () => {
  const draft = started(begun(), USUAL);
  expect(draft).toMatchObject({
    isIdentityChecked: true,
    pulse: { notDone: null },
    pressure: { notDone: null },
  });
  expect(roundContent(draft, [], UNDER).begun).toEqual(USUAL);
});

test('who declined has every wanted sign declined, but none that was taken before', () => {
  const declined = started(begun(), DECLINED);
  const signs = roundContent(declined, [], UNDER).signs;
  expect(signs).toEqual(
    DEFAULT_PLAN_RULES.wantedSigns.map((sign) => ({ sign, notDone: { reason: 'declined', text: null } })),
  );
  const taken = started(withValue(begun(), 'pulse', counted(20, 'pulse', 19, 15)), DECLINED);
  expect(taken.pulse.values.length).toBe(1);
  expect(taken.breaths.notDone).toEqual({ reason: 'declined', text: null });
});

test('a rest that was whole is kept and is no exception; one that still goes on says nothing yet', () => {
  const since = { session: 's', atMs: 0 };
  const rest = { neededSeconds: 300, keptSeconds: 300, since: null, skipped: null };
  const signing = {
    agent: AGENT,
    role: 'observer',
    device: DEVICE,
    signedAt: AT(9),
    sequence: 9,
    ...UNDER,
  } as const;
  const of = (more: object) => {
    const draft = { ...begun(), exceptions: ['rested', 'calm'] as const, ...more };
    return roundContent(draft, valueEntriesOf(draft, signing), UNDER);
  };
  expect(of({ rest })).toMatchObject({
    rest: { seconds: 300, neededSeconds: 300, skipped: null },
    evidence: { exceptions: ['calm'] },
  });
  expect(of({ rest: { ...rest, since } })).toMatchObject({
    rest: null,
    evidence: { exceptions: ['rested', 'calm'] },
  });
});

import { NO_ROUND_FACTS } from '@evenfall/clinical';
import {
  chartRound,
  type EntryFrame,
  NOTHING_CHOSEN,
  PROGRAM,
  type RoundContent,
  type RoundEvidence,
  readEntry,
} from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
import { takeEntries } from './takeEntries.js';

let database: TestDatabase;
let clinic: TestClinic;
let person: string;
const supervisor = v7();
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
  person = await clinic.addPerson();
  await clinic.send('POST', '/api/agents', { id: supervisor, name: 'Dr Larch (invented)' });
}, 60_000);
afterAll(async () => {
  await database.close();
});

const EVIDENCE: RoundEvidence = {
  exceptions: [],
  features: null,
  unwell: null,
  facts: { ...NO_ROUND_FACTS, arms: [] },
};

/** A pulse of 76 and the signing of its round, as the page makes them. */
function round(more: Partial<RoundContent> = {}, of = person): [EntryFrame, EntryFrame] {
  const id = v7();
  const pulse = clinic.pulse(of, 19, 15, { round: id });
  const read = readEntry(pulse);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const signs = [{ sign: 'pulse' as const, entries: [pulse.id] }];
  const signed = { status: 'preliminary' as const, signs, note: null, evidence: EVIDENCE };
  const content = { ...chartRound(signed, [read.value], NOTHING_CHOSEN, PROGRAM), ...more };
  return [pulse, clinic.frame('round', of, content, { round: id, schema: 4 })];
}

async function problemsOf(...frames: EntryFrame[]): Promise<unknown> {
  const { status, body } = await clinic.sign(...frames);
  return status === 422
    ? body.problems.map(({ field, code }: { field: string; code: string }) => `${field} ${code}`)
    : status;
}

describe('a signing', () => {
  test('with what the protocol makes of its entries is kept, and check finds nothing', async () => {
    expect(await problemsOf(...round())).toBe(201);
    expect((await clinic.send('GET', '/control/check')).body.findings).toEqual([]);
  });

  test('with something else made of them is refused, at its place', async () => {
    const [pulse, signing] = round();
    const content = signing.content as RoundContent;
    const value = { ...content.value, meanPressureMmHg: 90 } as RoundContent['value'];
    expect(await problemsOf(...round({ value }))).toEqual([
      '/entries/1/content/value/meanPressureMmHg contradicts',
    ]);
    expect(pulse.round).toBe(signing.round);
  });

  test('in which nothing was made of its entries is refused, save in the schema that had no place for it', async () => {
    const nothing = { evidence: null, value: null, computedBy: null };
    expect(await problemsOf(...round(nothing))).toEqual(['/entries/1/content/value missing']);
    const [pulse, { content, ...signing }] = round();
    const { status, signs, protocolVersion, note } = content;
    expect(
      await problemsOf(pulse, { ...signing, schema: 1, content: { status, signs, protocolVersion, note } }),
    ).toBe(201);
  });

  test('that names a value and what amends it would count one reading twice, and is refused', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    const again = clinic.pulse(person, 20, 15, clinic.amending(pulse));
    const read = [pulse, again].map((entry) => {
      const one = readEntry(entry);
      if (!one.ok) throw new Error(JSON.stringify(one.refusals));
      return one.value;
    });
    const naming = (...entries: string[]) => {
      const signed = {
        status: 'preliminary' as const,
        signs: [{ sign: 'pulse' as const, entries }],
        note: null,
        evidence: EVIDENCE,
      };
      const content = chartRound(signed, read, NOTHING_CHOSEN, PROGRAM);
      return clinic.frame('round', person, content, { ...clinic.amending(signing), schema: 4 });
    };
    expect(await problemsOf(again, naming(pulse.id, again.id))).toEqual([
      '/entries/1/content/signs/0/entries/1 repeated',
    ]);
    expect(await problemsOf(again, naming(again.id))).toBe(201);
  });

  test('by an unknown rule of this program is refused, by one of another program is left to check', async () => {
    const { computedBy } = round()[1].content as RoundContent;
    if (computedBy === null) throw new Error('nothing was made of the round');
    const rule = 'round-99';
    expect(await problemsOf(...round({ computedBy: { ...computedBy, rule } }))).toEqual([
      '/entries/1/content/computedBy/rule unknown-id',
    ]);
    expect(await problemsOf(...round({ computedBy: { ...computedBy, rule, program: 'evenfall 9.9' } }))).toBe(
      201,
    );
  });
});

describe('a learner’s signing', () => {
  test('is made final by no amendment, the learner’s or another’s', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    const amended = (status: string, more: Partial<EntryFrame> = {}) =>
      clinic.frame(
        'round',
        person,
        { ...signing.content, status },
        { ...clinic.amending(signing), schema: 4, ...more },
      );
    for (const more of [{}, { agent: supervisor, role: 'supervisor' as const }])
      expect(await problemsOf(amended('final', more))).toEqual(['/entries/0/content/status contradicts']);
    const kept = amended('preliminary');
    expect(await problemsOf(kept)).toBe(201);
    const further = clinic.frame(
      'round',
      person,
      { ...signing.content, status: 'final' },
      {
        ...clinic.amending(kept),
        schema: 4,
      },
    );
    expect(await problemsOf(further)).toEqual(['/entries/0/content/status contradicts']);
  });

  // The supervisor's own reading stands beside the learner's, never in its mean.
  test('names nothing that somebody else took; a qualified one may', async () => {
    const by = (status: 'preliminary' | 'final') => {
      const [pulse, signing] = round({ status });
      return [{ ...pulse, agent: supervisor }, signing] as const;
    };
    expect(await problemsOf(...by('preliminary'))).toEqual([
      '/entries/1/content/signs/0/entries/0 contradicts',
    ]);
    expect(await problemsOf(...by('final'))).toBe(201);
  });
});

describe('a countersigning', () => {
  const by = { agent: supervisor, role: 'supervisor' as const };
  const countersigning = (signing: EntryFrame, content: object = {}, more: Partial<EntryFrame> = {}) =>
    clinic.frame(
      'countersigned',
      signing.person,
      { signing: signing.id, agrees: true, ownRound: null, note: null, ...content },
      { round: signing.round, ...by, ...more },
    );

  test('is made by a supervisor who did not sign the round', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    expect(await problemsOf(countersigning(signing, {}, { role: 'observer' }))).toEqual([
      '/entries/0/role contradicts',
    ]);
    expect(await problemsOf(countersigning(signing, {}, { agent: clinic.agent }))).toEqual([
      '/entries/0/agent contradicts',
    ]);
    expect(await problemsOf(countersigning(signing))).toBe(201);
  });

  test('is not made by who signed the round in any way, as its first signing or an amendment of it', async () => {
    const [pulse, signing] = round();
    const put = clinic.frame('round', person, signing.content, {
      ...clinic.amending(signing),
      schema: 4,
      agent: supervisor,
    });
    expect(await problemsOf(pulse, signing, put)).toBe(201);
    const REFUSED = ['/entries/0/agent contradicts'];
    expect(await problemsOf(countersigning(signing))).toEqual(REFUSED);
    expect(await problemsOf(countersigning(put, {}, { agent: clinic.agent }))).toEqual(REFUSED);
  });

  test('is not made by a learner, until they sign as somebody qualified', async () => {
    const learner = v7();
    await clinic.send('POST', '/api/agents', { id: learner, name: 'Sorrel (invented)' });
    const as = (agent: string, status: 'preliminary' | 'final') =>
      round({ status }).map((entry) => ({ ...entry, agent }));
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    expect(await problemsOf(...as(learner, 'preliminary'))).toBe(201);
    expect(await problemsOf(countersigning(signing, {}, { agent: learner }))).toEqual([
      '/entries/0/agent contradicts',
    ]);
    expect(await problemsOf(...as(learner, 'final'))).toBe(201);
    const agreed = countersigning(signing, {}, { agent: learner });
    expect(await problemsOf(agreed)).toBe(201);
    // Sent again by a device that had no answer, though they sign as a learner again meanwhile: kept once, and no error.
    expect(await problemsOf(...as(learner, 'preliminary'))).toBe(201);
    expect(await problemsOf(agreed)).toBe(200);
  });

  test('names a signing of its round and person, and a round of the supervisor that is signed', async () => {
    const [pulse, signing] = round();
    const [ownPulse, own] = round({ status: 'final' }).map((entry) => ({ ...entry, agent: supervisor }));
    const [otherPulse, other] = round({ status: 'final' });
    if (ownPulse === undefined || own === undefined) throw new Error('no round');
    const [learntPulse, learnt] = round().map((entry) => ({ ...entry, agent: supervisor }));
    if (learntPulse === undefined || learnt === undefined) throw new Error('no round');
    expect(await problemsOf(learntPulse, learnt)).toBe(201);
    expect(await problemsOf(pulse, signing, ownPulse, own, otherPulse, other)).toBe(201);
    expect(await problemsOf(countersigning(signing, { signing: pulse.id }))).toEqual([
      '/entries/0/content/signing unknown-id',
    ]);
    expect(await problemsOf(countersigning(signing, { signing: own.id }))).toEqual([
      '/entries/0/content/signing unknown-id',
    ]);
    // Not there, the learner's, somebody else's, and one that they signed as a learner.
    for (const ownRound of [v7(), signing.round, other.round, learnt.round])
      expect(await problemsOf(countersigning(signing, { ownRound }))).toEqual([
        '/entries/0/content/ownRound unknown-id',
      ]);
    expect(await problemsOf(countersigning(signing, { ownRound: own.round }))).toBe(201);
  });
});

describe('what closes an act-now, and what ends a fact', () => {
  const closed = {
    conditions: ['very-slow-pulse'],
    toldWhom: 'Dr Larch (invented)',
    toldAt: { at: '2026-11-25T09:40:00Z', zone: 'UTC', asEntered: null },
    saidBack: 'comes at once',
  };

  test('stands in a signed round of this person', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    const other = await clinic.addPerson();
    const closing = (more: Partial<EntryFrame>) =>
      clinic.frame('act-now-closed', person, closed, { round: signing.round, ...more });
    expect(await problemsOf(closing({ round: v7() }))).toEqual(['/entries/0/round unknown-id']);
    expect(await problemsOf(closing({ person: other }))).toEqual(['/entries/0/round unknown-id']);
    expect(await problemsOf(closing({}))).toBe(201);
  });

  test('says whom, what was said back, and when after it was measured; what was kept before, or elsewhere, stays', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    const telling = (more: object) =>
      clinic.frame('act-now-closed', person, { ...closed, ...more }, { round: signing.round });
    const early = { ...closed.toldAt, at: '2001-01-01T10:00:00+00:00' };
    expect(await problemsOf(telling({ toldWhom: '.', saidBack: '-', toldAt: early }))).toEqual([
      '/entries/0/content/toldWhom missing',
      '/entries/0/content/saidBack missing',
      '/entries/0/content/toldAt/at out-of-range',
    ]);
    const late = { ...closed.toldAt, at: '2101-01-01T10:00:00+00:00' };
    expect(await problemsOf(telling({ toldAt: late }))).toEqual([
      '/entries/0/content/toldAt/at out-of-range',
    ]);
    // The clinic's clock says 10:00, and so did whoever wrote it.
    const toCome = { ...closed.toldAt, at: '2026-11-26T09:00:00Z' };
    const refused = await clinic.sign(telling({ toldAt: toCome }));
    expect([refused.status, refused.body.problems]).toMatchObject([
      422,
      [{ field: '/entries/0/content/toldAt/at', code: 'out-of-range', expected: 'a time that has been' }],
    ]);
    expect(await problemsOf(telling({ toldWhom: '李', saidBack: '4421' }))).toBe(201);
    const elsewhere = telling({ toldWhom: '.', toldAt: early });
    const read = readEntry(elsewhere);
    if (!read.ok) throw new Error('not read');
    const incoming = { frame: elsewhere, entry: read.value };
    const { db } = clinic;
    const site = (await db.selectFrom('site').select('id').executeTakeFirstOrThrow()).id;
    const old = [{ ...incoming, recordedAt: '2026-11-20T10:00:00Z' }];
    expect((await takeEntries(db, site, old, PROGRAM)).outcome).toBe('taken');
    expect(await problemsOf(elsewhere)).toBe(200);
  });

  test('can be entered in error, and so can the end of a fact and a countersigning: nothing is done by a slip for ever', async () => {
    const [pulse, signing] = round();
    expect(await problemsOf(pulse, signing)).toBe(201);
    const fact = clinic.frame('fact', person, {
      about: { fact: 'drip', side: 'left' },
      from: '2026-11-20',
      until: null,
      text: null,
    });
    const slips = [
      clinic.frame('act-now-closed', person, closed, { round: signing.round }),
      clinic.frame('fact-ended', person, { fact: fact.id, until: '2026-11-21' }),
      clinic.frame(
        'countersigned',
        person,
        { signing: signing.id, agrees: true, ownRound: null, note: null },
        { round: signing.round, agent: supervisor, role: 'supervisor' },
      ),
    ];
    expect(await problemsOf(fact, ...slips)).toBe(201);
    for (const slip of slips) {
      const mark = clinic.frame('entered-in-error', person, { note: null }, clinic.amending(slip));
      expect(await problemsOf(mark)).toBe(201);
      // The mark stands: what was a slip is said anew, not by taking the mark back.
      expect(await problemsOf({ ...slip, id: v7(), ...clinic.amending(mark) })).toEqual([
        '/entries/0/amends/entry contradicts',
      ]);
    }
  });

  test('names a fact of this person, and ends it no sooner than it began', async () => {
    const about = { fact: 'drip', side: 'left' };
    const fact = clinic.frame('fact', person, { about, from: '2026-11-20', until: null, text: null });
    const ended = (until: string, named = fact.id) =>
      clinic.frame('fact-ended', person, { fact: named, until });
    expect(await problemsOf(fact)).toBe(201);
    expect(await problemsOf(ended('2026-11-21', v7()))).toEqual(['/entries/0/content/fact unknown-id']);
    expect(await problemsOf(ended('2026-11-19'))).toEqual(['/entries/0/content/until out-of-range']);
    expect(await problemsOf(ended('2026-11-20'))).toBe(201);
    const right = { ...fact.content, about: { fact: 'drip', side: 'right' } };
    expect(await problemsOf(clinic.frame('fact', person, right, clinic.amending(fact)))).toBe(201);
  });
});

import { misnamed, type Recomputed, recompute, recomputeRound } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { contentHash } from '../store/canonical.js';
import { keptProtocols } from '../store/protocols.js';
import { frameOf, readRow, readRows } from '../store/rows.js';

/** An entry that is not what its evidence says, or that cannot be told. */
export type Finding = {
  readonly entry: string;
  readonly kind: string;
  readonly state:
    | Exclude<Recomputed['state'], 'same' | 'no-value'>
    | 'changed'
    | 'unreadable'
    | 'rests-on-unreadable'
    | 'names-another';
  /** Where the value differs, as a JSON Pointer. */
  readonly at: string | null;
  readonly kept: unknown;
  readonly computed: unknown;
};

/** What a check looked at and what it found; an empty `findings` means looked, none found. */
export type Checked = {
  readonly entries: number;
  readonly values: number;
  readonly findings: readonly Finding[];
};

const PAGE_ROWS = 500;

/**
 * Recomputes every value from its evidence with the rule it names and says what differs, and holds every entry
 * against the hash it was kept with. Changes nothing.
 */
export async function checkRecord(db: Kysely<Tables>, site: string): Promise<Checked> {
  const inForce = await keptProtocols(db, site);
  const findings: Finding[] = [];
  let [entries, values] = [0, 0];
  let after: { book: string; id: string } | null = null;
  for (;;) {
    let page = db.selectFrom('entry').selectAll().where('site', '=', site);
    if (after !== null) {
      const { book, id } = after;
      page = page.where((is) =>
        is.or([is('book', '>', book), is.and([is('book', '=', book), is('id', '>', id)])]),
      );
    }
    const rows = await page.orderBy('book').orderBy('id').limit(PAGE_ROWS).execute();
    for (const row of rows) {
      entries += 1;
      const found = checkRow(row, inForce, await namedIn(db, row));
      values += found.isValue ? 1 : 0;
      findings.push(...found.findings);
    }
    const last = rows.at(-1);
    if (last === undefined || rows.length < PAGE_ROWS) return { entries, values, findings };
    after = { book: last.book, id: last.id };
  }
}

type Row = Parameters<typeof readRow>[0];

/** The entries of the round that a signing is of; none for what is no signing. */
async function namedIn(
  db: Kysely<Tables>,
  { kind, site, book, person, round }: Row,
): Promise<readonly Row[]> {
  if (kind !== 'round') return [];
  return await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .where('round', '=', round)
    .execute();
}

function checkRow(row: Row, inForce: Parameters<typeof recompute>[1], ofRound: readonly Row[]) {
  const finding = (state: Finding['state'], more: Partial<Finding> = {}): Finding => ({
    entry: row.id,
    kind: row.kind,
    state,
    at: null,
    kept: null,
    computed: null,
    ...more,
  });
  const findings: Finding[] = [];
  if (contentHash(frameOf(row)) !== row.sha256) findings.push(finding('changed'));
  const read = readRow(row);
  if (!read.ok) {
    const at = read.refusals[0]?.field ?? null;
    return { isValue: false, findings: [...findings, finding('unreadable', { at })] };
  }
  const beside = readRows(ofRound);
  if (read.value.kind === 'round' && beside.unreadable > 0)
    return { isValue: false, findings: [...findings, finding('rests-on-unreadable')] };
  if (read.value.kind === 'round') {
    const named = new Map(beside.entries.map((entry) => [entry.id, entry]));
    for (const { at, id } of misnamed(read.value, named))
      findings.push(finding('names-another', { at, kept: id }));
  }
  let again: Recomputed;
  try {
    const entry = read.value;
    again =
      entry.kind === 'round' ? recomputeRound(entry, beside.entries, inForce) : recompute(entry, inForce);
  } catch (error) {
    return { isValue: false, findings: [...findings, finding('unreadable', { kept: String(error) })] };
  }
  const isValue = again.state !== 'no-value';
  if (again.state === 'differs') {
    findings.push(finding('differs', { at: again.at, kept: again.kept, computed: again.computed }));
  } else if (again.state === 'impossible-evidence') {
    findings.push(finding('impossible-evidence', { at: again.refusals[0]?.field ?? null }));
  } else if (again.state === 'unknown-rule' || again.state === 'unknown-protocol')
    findings.push(finding(again.state));
  return { isValue, findings };
}

import type { CountOf } from '@evenfall/clinical';
import type { InForce, StoredEntry } from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { withPulseOfRuns } from '../pressure/pulseOfRuns.js';
import { loadAbout, loadRecord } from '../server/load.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { ASKED, recordKey } from '../store/known.js';
import { type DraftValue, interrupted, type RoundDraft, withMeasuring } from './draft.js';
import { type Facts, factsOf } from './facts.js';
import type { Measuring } from './measuring.js';
import { useTapRules } from './tapRulesLater.js';
import { isOfAnother, takenBy } from './whose.js';

/** A person's record as the server has it, asked for when a screen opens. */
export function useRecord(person: string) {
  const app = useApp();
  const { book } = useBook();
  useEffect(() => void loadRecord(app, person, book), [app, person, book]);
  const asked = useKept(({ known }) => known.records[recordKey(book, person)]) ?? ASKED;
  return { asked, again: () => loadRecord(app, person, book) };
}

/** The rules in force, asked for when the page opened. */
export function useInForce() {
  const app = useApp();
  return { asked: useKept(({ known }) => known.inForce), again: () => loadAbout(app) };
}

/** The entries of a record, typed: the server read them by their schemas and answers in the newest ones. */
export function entriesIn(record: { readonly entries: readonly unknown[] }): readonly StoredEntry[] {
  return record.entries as readonly StoredEntry[];
}

/** A round under way: its draft, what bears on it, and the ways to change it. */
export type Round = {
  readonly draft: RoundDraft;
  readonly facts: Facts;
  readonly inForce: InForce;
  readonly change: (change: (draft: RoundDraft) => RoundDraft) => void;
  readonly measure: (sign: CountOf, measuring: Measuring) => void;
  /** Keeps a value, giving it its id and its number in one step. */
  readonly keep: (
    make: (draft: RoundDraft, start: Pick<DraftValue, 'entry' | 'sequence'>) => RoundDraft,
  ) => void;
};

/** The draft of a person's round on this device, on a screen of its own book and session; on no other. */
export function useDraft(person: string): RoundDraft | undefined {
  const { book, session } = useBook();
  return useKept(({ kept }) => {
    const draft = kept.drafts[person];
    return draft?.book === book && draft.session === session ? draft : undefined;
  });
}

/** The round of a person on this device; null while there is none, or while its rules are not known yet. */
export function useRound(person: string): Round | null {
  const { store, ids } = useApp();
  const draft = useDraft(person);
  const { book } = useBook();
  const inForce = useKept(({ known }) => known.inForce.value);
  const record = useKept(({ known }) => known.records[recordKey(book, person)]?.value);
  const onDate = draft === undefined ? null : localDate(draft.begunAt);
  const facts = useMemo(
    () =>
      record === undefined || record === null || onDate === null
        ? null
        : factsOf(record, entriesIn(record), onDate),
    [record, onDate],
  );
  const isReadable = useTapRules(draft);
  const agent = useMeasuring();
  if (draft === undefined || inForce === null || facts === null || !isReadable) return null;

  const change: Round['change'] = (make) =>
    store.change((state) => {
      const was = state.kept.drafts[person];
      if (was === undefined || isOfAnother(was, agent)) return state;
      const next = withPulseOfRuns(make(was), inForce);
      if (next === was) return state;
      const drafts = { ...state.kept.drafts, [person]: takenBy(next, agent) };
      return { ...state, kept: { ...state.kept, drafts } };
    });
  return {
    draft,
    facts,
    inForce,
    change,
    measure: (sign, measuring) => change((was) => withMeasuring(was, sign, measuring)),
    keep: (make) => {
      const start = { entry: ids(), sequence: store.get().kept.sequence };
      change((was) => make(was, start));
      store.change((state) => ({ ...state, kept: { ...state.kept, sequence: state.kept.sequence + 1 } }));
    },
  };
}

/** What was running in another visit cannot be finished in this one: it is void. */
export function revived(
  draft: RoundDraft,
  session: string,
  start: Pick<DraftValue, 'entry' | 'sequence'>,
): RoundDraft {
  return (['pulse', 'breaths'] as const).reduce((round, sign) => {
    const { measuring } = round[sign];
    const isStale = 'session' in measuring && measuring.session !== session;
    return isStale ? interrupted(round, sign, { reason: 'screen-left', nowMs: null }, start) : round;
  }, draft);
}

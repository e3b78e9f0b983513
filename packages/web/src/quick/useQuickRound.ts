import { useMemo, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { begunRound, type RoundDraft } from '../round/draft.js';
import { factsOf } from '../round/facts.js';
import { useTapRules } from '../round/tapRulesLater.js';
import { entriesIn, type Round, useDraft } from '../round/useRound.js';
import { isOfAnother, takenBy } from '../round/whose.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { recordKey } from '../store/known.js';

/** A round that is kept on this device once something is said in it, and not before; null while its rules are not known. */
export type QuickRound = Pick<Round, 'draft' | 'facts' | 'inForce' | 'change'>;

/** The round of a person that is typed: the one under way, else a fresh one, begun when the page was opened. */
export function useQuickRound(person: string): QuickRound | null {
  const { store, ids, clock } = useApp();
  const kept = useDraft(person);
  const [fresh] = useState(() =>
    begunRound(person, { round: ids(), signing: ids(), begunAt: clock.stamp() }),
  );
  const draft = kept ?? fresh;
  const inForce = useKept(({ known }) => known.inForce.value);
  const record = useKept(({ known }) => known.records[recordKey('care', person)]?.value);
  const onDate = localDate(draft.begunAt);
  const facts = useMemo(
    () => (record == null ? null : factsOf(record, entriesIn(record), onDate)),
    [record, onDate],
  );
  const isReadable = useTapRules(draft);
  const agent = useMeasuring();
  if (inForce === null || facts === null || !isReadable) return null;
  const change = (make: (draft: RoundDraft) => RoundDraft) =>
    store.change((state) => {
      const was = state.kept.drafts[person] ?? fresh;
      if (isOfAnother(was, agent)) return state;
      const drafts = { ...state.kept.drafts, [person]: takenBy(make(was), agent) };
      return { ...state, kept: { ...state.kept, drafts } };
    });
  return { draft, facts, inForce, change };
}

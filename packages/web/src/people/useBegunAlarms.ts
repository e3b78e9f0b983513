import { useEffect, useMemo, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import type { BegunAlarm } from '../round/begunAlarm.js';
import type { RoundDraft } from '../round/draft.js';
import { goOnPages } from '../round/goOnLater.js';
import { laterTapRules } from '../round/tapRulesLater.js';
import { BOOK, loadRecord } from '../server/load.js';
import { recordKey } from '../store/known.js';

/** The alarms of rounds under way on this device, by person. */
export type BegunAlarms = ReadonlyMap<string, BegunAlarm>;

export const NO_ALARMS: BegunAlarms = new Map();

/**
 * What the rounds of the charts that were begun on this device and not signed ask somebody to do at once. What judges them is
 * fetched with the pages of a round: until it is here there is none, and a round that was begun is marked as such.
 */
export function useBegunAlarms(): BegunAlarms {
  const app = useApp();
  const { program } = app;
  const drafts = useKept(({ kept }) => kept.drafts);
  const inForce = useKept(({ known }) => known.inForce.value);
  const records = useKept(({ known }) => known.records);
  const people = useKept(({ known }) => known.people.value);
  const [pages, setPages] = useState(() => (laterTapRules.here() === null ? null : goOnPages.here()));
  const taken = useMemo(() => Object.values(drafts).filter(isTaken), [drafts]);
  const isMissing = taken.length > 0 && pages === null;
  useEffect(() => {
    if (!isMissing) return;
    Promise.all([goOnPages.fetch(), laterTapRules.fetch()]).then(
      ([brought]) => setPages(brought),
      // Where it cannot be fetched the round itself says so.
      () => undefined,
    );
  }, [isMissing]);
  const unread = taken.filter(({ person }) => records[recordKey(BOOK, person)] === undefined);
  const wanted = unread.map(({ person }) => person).join(' ');
  useEffect(() => {
    for (const person of wanted.split(' ').filter((one) => one !== '')) void loadRecord(app, person, BOOK);
  }, [app, wanted]);

  return useMemo(() => {
    if (pages === null || inForce === null || taken.length === 0) return NO_ALARMS;
    return new Map(
      taken.flatMap((draft): [string, BegunAlarm][] => {
        const { person } = draft;
        const record = records[recordKey(BOOK, person)]?.value ?? null;
        const who = record ??
          people?.find(({ id }) => id === person) ?? { identity: null, classIdentity: null };
        const facts = pages.factsOf(
          who,
          pages.entriesIn(record ?? { entries: [] }),
          localDate(draft.begunAt),
        );
        const alarm = pages.begunAlarm(draft, { facts, inForce, program });
        return alarm === null ? [] : [[person, alarm]];
      }),
    );
  }, [pages, inForce, taken, records, people, program]);
}

/** Whether something was taken that can alarm, of a person of the charts. */
function isTaken({ book, pulse, breaths, pressure, measures, unwell, features }: RoundDraft): boolean {
  const values = pulse.values.length + breaths.values.length + pressure.values.length + measures.length;
  return book === BOOK && (values > 0 || unwell === true || (features?.length ?? 0) > 0);
}

import { chartedArm, type StoredEntry } from '@evenfall/record';
import { useMemo } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { entriesIn, useInForce } from '../round/useRound.js';
import { recordKey } from '../store/known.js';

type ArmChartedProps = {
  readonly run: StoredEntry & { readonly kind: 'run' };
  readonly person: string;
};

/** That the facts of its day speak against the arm of a charted pressure, and nobody said why it was taken all the same. */
export function ArmCharted({ run, person }: ArmChartedProps) {
  const { words } = useApp();
  const { book } = useBook();
  const record = useKept(({ known }) => known.records[recordKey(book, person)]?.value) ?? null;
  const rules = useInForce().asked.value?.roundRules.cuff;
  const found = useMemo(
    () => (record === null || rules === undefined ? null : chartedArm(run, entriesIn(record), rules)),
    [run, record, rules],
  );
  if (found === null) return null;
  const text = words.say.allOf(found.because.map((fact) => words.title('armFact', fact)));
  return (
    <p className="notice">
      {words.sentence(found.against === 'never' ? 'chart.armBarred' : 'chart.armNoReason', { text })}
    </p>
  );
}

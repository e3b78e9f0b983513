import type { AnsweredRecording } from '@evenfall/record';
import { variationRows } from '@evenfall/report';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { MeasuresTable } from './MeasuresTable.js';

type VariationProps = Pick<AnsweredRecording, 'result'> & { readonly children: ReactNode };

/** How far the readings lie apart, in every way: folded away, with what is asked for besides. */
export function Variation({ result, children }: VariationProps) {
  const { words } = useApp();
  const number = (value: number | null) => (value === null ? '–' : words.say.number(value, 1));
  return (
    <details className="more away-fold">
      <summary>{words.sentence('away.variation')}</summary>
      <MeasuresTable
        label={words.sentence('away.variation')}
        rows={variationRows(result, words).map(({ name, of }) => ({ name, cell: (one) => number(of[one]) }))}
      />
      {children}
    </details>
  );
}

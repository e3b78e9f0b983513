import type { AnsweredRecording } from '@evenfall/record';
import { variationRows } from '@evenfall/report';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';

const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;

type VariationProps = Pick<AnsweredRecording, 'result'> & { readonly children: ReactNode };

/** How far the readings lie apart, in every way: folded away, with what is asked for besides. */
export function Variation({ result, children }: VariationProps) {
  const { words } = useApp();
  const number = (value: number | null) => (value === null ? '–' : words.say.number(value, 1));
  return (
    <details className="more away-fold">
      <summary>{words.sentence('away.variation')}</summary>
      <Scrolling label={words.sentence('away.variation')}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              {MEASURES.map((one) => (
                <th key={one} scope="col">
                  {words.sentence(`away.${one}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {variationRows(result, words).map(({ name, of }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {MEASURES.map((one) => (
                  <td key={one}>{number(of[one])}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
      {children}
    </details>
  );
}

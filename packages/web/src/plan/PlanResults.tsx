import type { PlanResult, ProtocolResult } from '@evenfall/practice';
import { planFigure, planHeight } from '@evenfall/report';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { FigureTable } from '../away/FigureTable.js';
import { PlanCounts } from './PlanCounts.js';
import { pairedLines, planRows } from './planRows.js';

type ResultsProps = {
  readonly result: PlanResult;
  /** Something was changed in the form after it was begun. */
  readonly isOld: boolean;
};

/** What both ways got wrong, with the errors of the study in words. The page goes to it when it comes. */
export function PlanResults({ result, isOld }: ResultsProps) {
  const { words } = useApp();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { protocol, against } = result;
  const rows = planRows(result, words);
  const lines = pairedLines(result, words);
  return (
    <section>
      <h2 ref={heading} tabIndex={-1}>
        {words.sentence('plan.results')}
      </h2>
      {isOld ? <p className="notice">{words.sentence('plan.isOld')}</p> : null}
      <p role="status">
        <strong>{words.sentence('plan.ofPeople', { people: protocol.people })}</strong>{' '}
        {words.sentence('plan.errorsSay')}
      </p>
      {lines.length === 0 ? null : (
        <div>
          <h3>{words.sentence('plan.apart')}</h3>
          <ul className="plan-differ">
            {lines.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
      <FigureShown name="plan" height={planHeight(rows)} draw={(how) => planFigure(rows, words, how)} />
      <p className="small soft">{words.sentence('plan.figureKey')}</p>
      <FigureTable title={words.sentence('plan.table')} table={planFigure(rows, words).table} />
      <table className="debrief-table">
        <caption className="unseen">{words.sentence('plan.results')}</caption>
        <thead>
          <tr>
            {(['what', 'first', 'second'] as const).map((key) => (
              <th key={key} scope="col">
                {words.sentence(`plan.${key}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Row
            says="minutes"
            protocol={protocol}
            against={against}
            text={({ minutes, standardErrors }) =>
              words.sentence('plan.minutesText', { amount: minutes, error: standardErrors.minutes })
            }
          />
          <Row
            says="readingsEach"
            protocol={protocol}
            against={against}
            text={({ readings }) => words.sentence('plan.number', { amount: readings })}
          />
          <Row
            says="without"
            protocol={protocol}
            against={against}
            text={({ without }) => words.sentence('plan.shareText', { amount: 100 * without, error: null })}
          />
        </tbody>
      </table>
      <PlanCounts result={result} />
    </section>
  );
}

type RowProps = {
  readonly says: 'minutes' | 'readingsEach' | 'without';
  readonly protocol: ProtocolResult;
  readonly against: ProtocolResult | null;
  readonly text: (result: ProtocolResult) => string;
};

function Row({ says, protocol, against, text }: RowProps) {
  const { words } = useApp();
  return (
    <tr>
      <th scope="row">{words.sentence(`plan.${says}`)}</th>
      <td>{text(protocol)}</td>
      <td>{against === null ? '–' : text(against)}</td>
    </tr>
  );
}

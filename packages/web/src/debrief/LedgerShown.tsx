import type { Debrief, FaultCode } from '@evenfall/practice';
import { ledgerFigure, ledgerHeight } from '@evenfall/report';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { Folded } from '../parts/Folded.js';
import { ledgerSteps } from './ledgerSteps.js';

/** Faults of a cuff that was not above the sounds when it began to fall. */
const BEGUN_LOW: ReadonlySet<FaultCode> = new Set(['margin-small', 'not-felt-first', 'began-in-sounds']);

/** Where each difference came from, as a staircase for each number: folded, for one table of numbers is what is gone by. */
export function LedgerShown({ result: { ledger, costs, isAfterGap } }: { readonly result: Debrief }) {
  const { words } = useApp();
  if (ledger.systolic === null && ledger.diastolic === null) return null;
  const isBegunLow = costs.costs.some(({ code }) => BEGUN_LOW.has(code));
  const isNotShared = (['systolic', 'diastolic'] as const).some(
    (of) => ledger[of] !== null && costs.costs.some((one) => one[of] === null),
  );
  return (
    <Folded summary={words.sentence('debrief.ledgerFold')} of={words.sentence('debrief.ledger')}>
      <p className="small soft">{words.sentence('debrief.ledgerHint')}</p>
      {isNotShared ? <p className="small soft">{words.sentence('debrief.ledgerNoNumber')}</p> : null}
      <div className="debrief-ledgers">
        {(['systolic', 'diastolic'] as const).map((component) => {
          const one = ledger[component];
          if (one === null) return null;
          const { truth, steps } = ledgerSteps(
            one,
            words,
            component === 'systolic' && isBegunLow,
            component === 'systolic' && isAfterGap,
          );
          const { entered } = one;
          return (
            <div key={component}>
              <h3>{words.sentence(`debrief.${component}`)}</h3>
              <FigureShown
                name={`ledger-${component}`}
                height={ledgerHeight(steps.length)}
                leastWidth={330}
                mostWidth={560}
                draw={(how) => ledgerFigure({ component, truth, entered, steps }, words, how)}
              />
            </div>
          );
        })}
      </div>
    </Folded>
  );
}

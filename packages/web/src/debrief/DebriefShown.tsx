import { type Debrief, debrief, type Exercise } from '@evenfall/practice';
import { exerciseFigure } from '@evenfall/report';
import { useMemo } from 'react';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { Flags } from '../parts/Flags.js';
import { ArteryLesson } from './ArteryLesson.js';
import { CostsTable } from './CostsTable.js';
import { FeltBackSays } from './FeltBackSays.js';
import { FigureTable } from './FigureTable.js';
import { LedgerShown } from './LedgerShown.js';
import { ReplaySound } from './ReplaySound.js';
import { ResultTable } from './ResultTable.js';
import { RUN_FIGURE } from './runFigure.js';
import { flagText, verdictText } from './verdict.js';

/** What came of an exercise: played again from its data alone, at once. */
export function DebriefShown({ exercise }: { readonly exercise: Exercise }) {
  const { words } = useApp();
  const result = useMemo(() => debrief(exercise), [exercise]);
  const flag = flagText(result, exercise.evidence.saysActNow, words);
  const { fall } = result;
  return (
    <div className="debrief">
      <section aria-label={words.sentence('debrief.reading')}>
        {flag === null ? null : (
          <p className={flag.isMissed ? 'notice debrief-missed' : 'notice'}>{flag.text}</p>
        )}
        <p className="debrief-verdict">{verdictText(result, words)}</p>
        <ResultTable result={result} />
        <FeltBackSays feltBack={result.feltBack} />
        {exercise.evidence.wasShown ? <p className="notice">{words.sentence('debrief.shown')}</p> : null}
        <OneThing result={result} />
      </section>
      {fall === null ? null : (
        <section>
          <h2>{words.sentence('debrief.figure')}</h2>
          <FigureShown
            name="run"
            draw={(how) => exerciseFigure({ ...result, fall }, words, how)}
            {...RUN_FIGURE}
          />
          <ReplaySound exercise={exercise} result={{ ...result, fall }} />
          <FigureTable
            title={words.sentence('debrief.table')}
            table={exerciseFigure({ ...result, fall }, words).table}
          />
        </section>
      )}
      <CostsTable costs={result.costs} />
      <LedgerShown result={result} />
      <Others result={result} />
      {fall === null ? null : <ArteryLesson result={{ ...result, fall }} />}
    </div>
  );
}

/** The one change that would do most. Source: assessment handbook 14 (one thing to change). */
function OneThing({ result: { costs, entered } }: { readonly result: Debrief }) {
  const { words } = useApp();
  const [worst] = costs.costs;
  if (worst === undefined) {
    if (entered.systolic === null && entered.diastolic === null) return null;
    return <p className="debrief-one">{words.sentence('debrief.nothingToChange')}</p>;
  }
  const { systolic, diastolic } = worst;
  const [fault, instead] = [
    words.sentence(`debrief.fault-${worst.code}`),
    words.sentence(`debrief.do-${worst.doInstead}`),
  ];
  return (
    <div className="debrief-one">
      <h2>{words.sentence('debrief.oneThing')}</h2>
      <p>
        {systolic === null && diastolic === null
          ? instead
          : words.sentence('debrief.oneThingSays', { instead, fault, systolic, diastolic })}
      </p>
    </div>
  );
}

/** Pulse and breaths beside what there were, and what the bedside's own rules say of the run. */
function Others({ result: { entered, truth, reading } }: { readonly result: Debrief }) {
  const { words } = useApp();
  const { pulsePerMinute, breathsPerMinute } = entered;
  const flags = reading?.flags ?? [];
  const hasCounts = pulsePerMinute !== null || breathsPerMinute !== null;
  return (
    <>
      {hasCounts ? (
        <section>
          <h2>{words.sentence('debrief.others')}</h2>
          <ul>
            {pulsePerMinute === null ? null : (
              <li>
                {words.sentence('debrief.pulseSays', {
                  entered: pulsePerMinute,
                  truth: truth.pulsePerMinute,
                  felt: truth.wristPerMinute,
                })}
              </li>
            )}
            {breathsPerMinute === null ? null : (
              <li>
                {words.sentence('debrief.breathsSays', {
                  entered: breathsPerMinute,
                  truth: truth.breathsPerMinute,
                })}
              </li>
            )}
          </ul>
        </section>
      ) : null}
      {flags.length === 0 ? null : (
        <section>
          <h2>{words.sentence('debrief.bedsideSays')}</h2>
          <Flags flags={flags} />
        </section>
      )}
    </>
  );
}

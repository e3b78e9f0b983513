import { assumptionsOf, type UsualKnown, usualOf, withOfficeVisits } from '@evenfall/clinical';
import { type OfficeNear, visitsMean } from '@evenfall/record';
import { chanceFigure } from '@evenfall/report';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';
import { FigureShown, SERIES_SCALE } from './FigureShown.js';
import { settledText } from './settledText.js';

type Threshold = { readonly systolic: number; readonly diastolic: number };
type ChancesProps = {
  readonly known: UsualKnown;
  /** The limit of high first. */
  readonly thresholds: readonly Threshold[];
  readonly office: OfficeNear | null;
};

const CURVE_HEIGHT = 160;
const CURVE_LEAST = 220;
const CURVE_MOST = 320;
/** Over half the width of a sheet: its lettering is 7 pt there. */
const ON_PAPER = { width: 304, heights: [88] };

const COMPONENTS = ['systolic', 'diastolic'] as const;

/**
 * How sure the answer is: the chance that the usual level is at or above a limit, under assumptions that are all said, with and
 * without what is thought beforehand; and whether more days would settle it.
 */
export function Chances({ known, thresholds, office }: ChancesProps) {
  const { words } = useApp();
  const [high] = thresholds;
  if (high === undefined) return null;
  const systolic = usualOf('systolic', known, high.systolic);
  const hasPrior = systolic?.prior != null;
  const visits = visitsMean(office);
  const together = visits === null ? null : withOfficeVisits(known, visits);
  return (
    <section className="away-chances" aria-label={words.sentence('away.howSure')}>
      <h2>{words.sentence('away.howSure')}</h2>
      <p>{words.sentence('away.chanceLead')}</p>
      <Scrolling label={words.sentence('away.howSure')}>
        <table className="away-table">
          <thead>
            <tr>
              <th scope="col">{words.sentence('away.atOrAbove')}</th>
              {hasPrior ? <th scope="col">{words.sentence('series.agePrior')}</th> : null}
              <th scope="col">{words.sentence('series.flatPrior')}</th>
              {visits === null ? null : (
                <th scope="col">{words.sentence('away.withOffice', { visits: visits.visits })}</th>
              )}
            </tr>
          </thead>
          <tbody>
            {thresholds.flatMap((threshold) =>
              COMPONENTS.map((component) => {
                const found = usualOf(component, known, threshold[component]);
                return found === null ? null : (
                  <tr key={`${component} ${threshold[component]}`}>
                    <th scope="row">
                      {words.sentence('away.componentAt', {
                        component: words.sentence(`away.${component}`),
                        mmHg: threshold[component],
                      })}
                    </th>
                    {hasPrior ? <td>{chanceText(found.probability, words)}</td> : null}
                    <td>{chanceText(found.probabilityFlatPrior, words)}</td>
                    {together === null ? null : (
                      <td>
                        {chanceText(
                          usualOf(component, together, threshold[component])?.probability ?? null,
                          words,
                        )}
                      </td>
                    )}
                  </tr>
                );
              }),
            )}
          </tbody>
        </table>
      </Scrolling>
      <ul className="away-left-out">
        {COMPONENTS.map((component) => {
          const found = usualOf(component, known, high[component]);
          return found === null ? null : (
            <li key={component}>
              {words.sentence('away.usualIs', {
                component: words.sentence(`away.${component}`),
                mean: found.mean,
                low: found.interval[0],
                high: found.interval[1],
              })}{' '}
              {settledText(found, high[component], words)}
            </li>
          );
        })}
      </ul>
      <div className="away-curves">
        {COMPONENTS.map((component) => {
          const found = usualOf(component, known, high[component]);
          return found === null ? null : (
            <FigureShown
              key={component}
              name={`chance-${component}`}
              height={CURVE_HEIGHT}
              leastWidth={CURVE_LEAST}
              mostWidth={CURVE_MOST}
              leastScale={SERIES_SCALE}
              hasTable
              onPaper={ON_PAPER}
              draw={(how) =>
                chanceFigure({ component, result: found, threshold: high[component] }, words, how)
              }
            />
          );
        })}
      </div>
      <details className="more not-printed">
        <summary>{words.sentence('away.assumptions')}</summary>
        <Assumed {...{ known, thresholds, office }} />
      </details>
    </section>
  );
}

/** What the chances assume, for paper: on the sheet after theirs, so that the drawing above them has room. */
export function PrintedAssumptions(chances: ChancesProps) {
  const { words } = useApp();
  return (
    <section className="printed-only away-assumptions" aria-label={words.sentence('away.assumptions')}>
      <h2>{words.sentence('away.assumptions')}</h2>
      <Assumed {...chances} />
    </section>
  );
}

function Assumed({ known, thresholds: [high], office }: ChancesProps) {
  const { words } = useApp();
  const systolic = high === undefined ? null : usualOf('systolic', known, high.systolic);
  const visits = visitsMean(office);
  const all = visits === null ? known : withOfficeVisits(known, visits);
  return (
    <ul className="away-left-out">
      {assumptionsOf(all, systolic).map((one) => (
        <li key={one.code}>{words.detail(one)}</li>
      ))}
    </ul>
  );
}

function chanceText(share: number | null, words: Words): string {
  return share === null ? '–' : words.sentence('away.chance', { share });
}

import { pulseDeficit } from '@evenfall/clinical';
import { reportOf, type Scenario } from '@evenfall/physiology';
import { type Conduct, type DebriefRules, type Judged, type RateRow, rateRows } from '@evenfall/practice';
import type { Aids } from '@evenfall/record';
import { type CountDrawn, countFigure } from '@evenfall/report';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { FigureTable } from '../away/FigureTable.js';
import { Flags } from '../parts/Flags.js';
import { isOfCount, rateTexts, rateVerdict, rhythmText, strengthText } from './countText.js';
import { insteadText } from './insteadText.js';

type CountsProps = {
  readonly judged: Judged;
  readonly conduct: readonly Conduct[];
  readonly scenario: Scenario;
  readonly rules: DebriefRules;
  readonly aids: Aids;
};

/** Every rate that was written, beside what there was to be counted, each in a section of its own. */
export function CountsShown({ judged, conduct, scenario, rules, aids }: CountsProps) {
  return rateRows(judged, scenario).map((row) => (
    <OneCount
      key={row.of}
      row={row}
      judged={judged}
      conduct={conduct.filter((one) => isOfCount(one, row.of))}
      scenario={scenario}
      rules={rules}
      aids={aids}
    />
  ));
}

const FIGURE = { height: 132, leastWidth: 320 } as const;

/** What is drawn of a rate that was counted or tapped; null: it was written without either. */
function drawnOf({ of, count, taps }: RateRow): CountDrawn | null {
  if (count !== null) return { ...count, of, yours: { of: 'number', n: count.n } };
  if (taps === null) return null;
  return { ...taps, of, there: taps.wanted.length, yours: { ...taps, of: 'taps' } };
}

function OneCount({ row, judged, conduct, scenario, rules, aids }: CountsProps & { readonly row: RateRow }) {
  const { words } = useApp();
  const { of, count } = row;
  const [first] = conduct;
  const drawn = drawnOf(row);
  const texts = [...rateTexts(row, words), ...beatsTexts(row, judged, words)];
  const strength = of === 'pulse' && count !== null ? strengthText(count, reportOf(scenario), words) : null;
  return (
    <section aria-labelledby={`debrief-${of}`}>
      <h2 id={`debrief-${of}`}>{words.sentence(`counts.title-${of}`)}</h2>
      <p className="debrief-verdict">{rateVerdict(row, words)}</p>
      {drawn === null ? null : (
        <>
          <FigureShown
            name={`count-${of}`}
            draw={(how) => countFigure(drawn, words, { ...how, height: FIGURE.height })}
            {...FIGURE}
          />
          <p className="small soft">
            {words.sentence(count === null ? 'counts.tapsKey' : 'counts.figureKey')}
          </p>
        </>
      )}
      {texts.length === 0 ? null : <p>{texts.join(' ')}</p>}
      {count === null ? null : (
        <>
          <p>{[rhythmText(count, words), ...(strength === null ? [] : [strength])].join(' ')}</p>
          <Better count={count} />
        </>
      )}
      {first === undefined ? null : (
        <p>
          <strong>{words.sentence('counts.oneThing')}:</strong>{' '}
          {insteadText(first.doInstead, rules, words, aids)}
        </p>
      )}
      {drawn === null ? null : (
        <FigureTable title={words.sentence('counts.table')} table={countFigure(drawn, words).table} />
      )}
    </section>
  );
}

/** Which window this person asks for, and why. */
function Better({ count }: { readonly count: NonNullable<RateRow['count']> }) {
  const { words } = useApp();
  const { nextWindowSeconds, why } = count.better;
  if (nextWindowSeconds === null) return <p>{words.sentence('counts.enough')}</p>;
  return (
    <>
      <p>{words.sentence('counts.better', { neededSeconds: nextWindowSeconds })}</p>
      <Flags flags={why} />
    </>
  );
}

type Words = ReturnType<typeof useApp>['words'];

/** Of a heart whose beats do not all reach the wrist. */
function beatsTexts({ of, count }: RateRow, { rates, entered }: Judged, { sentence }: Words): string[] {
  const { wristPerMinute, deficitPerMinute: trueDeficit } = rates;
  const heartPerMinute = count?.heartPerMinute ?? rates.heartPerMinute;
  const isDeficit = Math.round(heartPerMinute) !== Math.round(wristPerMinute);
  const { pulsePerMinute, apexPerMinute = null } = entered;
  if (of === 'pulse' && isDeficit && pulsePerMinute !== null)
    return [
      sentence('debrief.pulseSays', { entered: pulsePerMinute, truth: heartPerMinute, felt: wristPerMinute }),
    ];
  if (of !== 'apex' || apexPerMinute === null || pulsePerMinute === null) return [];
  const { deficitPerMinute } = pulseDeficit(apexPerMinute, pulsePerMinute, false);
  return deficitPerMinute === null
    ? []
    : [
        sentence('debrief.deficitSays', {
          entered: deficitPerMinute,
          truth: trueDeficit,
        }),
      ];
}

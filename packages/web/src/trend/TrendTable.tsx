import { TREND_SIGNS, type TrendRound } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { Scrolling } from '../parts/Scrolling.js';
import { averageText, elsewhereText, inChart, marksOf, titleText, trendText } from './trendText.js';

type TableProps = { readonly rounds: readonly TrendRound[]; readonly person: string };

/** Every number of a trend, newest first: what the drawing draws, for reading, copying and printing. */
export function TrendTable({ rounds, person }: TableProps) {
  const { words } = useApp();
  const signs = TREND_SIGNS.filter((sign) =>
    rounds.some(({ points }) => points.some(({ value }) => value.of === sign)),
  );
  return (
    <Scrolling label={words.sentence('trend.title')}>
      <table className="trend-table">
        <thead>
          <tr>
            <th scope="col">{words.sentence('trend.when')}</th>
            {signs.map((sign) => (
              <th key={sign} scope="col">
                {titleText(sign, words)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rounds.toReversed().map((round) => (
            <tr key={round.round}>
              <th scope="row">
                <Link href={inChart(person, round)}>{stampText(round, words)}</Link>
                {round.elsewhere === null ? null : (
                  <span className="small"> {elsewhereText(round.elsewhere, words)}</span>
                )}
                {round.isNotReliedOn ? (
                  <span className="small"> {words.sentence('trend.notReliedOn')}</span>
                ) : round.isPreliminary ? (
                  <span className="small soft"> {words.sentence('people.preliminary')}</span>
                ) : null}
              </th>
              {signs.map((sign) => (
                <td key={sign}>
                  <Cell round={round} sign={sign} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  );
}

type CellProps = { readonly round: TrendRound; readonly sign: (typeof TREND_SIGNS)[number] };

/** Every value of a sign in a round; what a round comes to first where it is a mean. */
function Cell({ round, sign }: CellProps) {
  const { words } = useApp();
  const average = sign === 'pressure' ? averageText(round, words) : null;
  const held = round.points.filter(({ value }) => value.of === sign);
  return (
    <>
      {average === null ? null : (
        <strong className="trend-average">{round.isNotReliedOn ? <s>{average}</s> : average}</strong>
      )}
      {held.map((point) => (
        <span key={point.entry} className="trend-number">
          {round.isNotReliedOn ? <s>{trendText(point.value, words)}</s> : trendText(point.value, words)}
          {marksOf(point, words).map((mark) => (
            <span key={mark} className="small soft">
              {' '}
              {mark}
            </span>
          ))}
        </span>
      ))}
    </>
  );
}

import type {
  DebriefRules,
  ReadingOfRound,
  ResultRow,
  RoundAverage,
  RoundOfReadings,
} from '@evenfall/practice';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';

type RoundProps = { readonly round: RoundOfReadings; readonly rules: DebriefRules };

/** Every reading of a visit beside what was to be had and what was true, and what the protocol makes of them. */
export function RoundTable({ round, rules }: RoundProps) {
  const { words } = useApp();
  const { readings, average, why, needs, flags } = round;
  const { rule, isGeneral } = rules.roundRules.readings;
  const used = readings.filter(({ isAveraged }) => isAveraged).map(({ number }) => words.say.number(number));
  const [systolic, diastolic] = average;
  return (
    <>
      <p className="small soft">
        {words.sentence(isGeneral === true ? 'debrief.roundByGeneral' : 'debrief.roundBy', {
          rule: words.title('readings', rule),
        })}
      </p>
      <table className="debrief-table debrief-round">
        <caption className="unseen">{words.sentence('debrief.round')}</caption>
        <thead>
          <tr>
            {(['roundColumn', 'roundWrote', 'roundHad', 'roundTruth', 'accepted'] as const).map((key) => (
              <th key={key} scope="col">
                {words.sentence(`debrief.${key}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {readings.map((one) => (
            <tr key={one.number}>
              <th scope="row">
                {words.sentence('debrief.roundReading', { number: one.number })}
                <span className="small soft">
                  {placeOf(one, words)}
                  <br />
                  {inAverage(one, words)}
                </span>
              </th>
              <td data-label={words.sentence('debrief.roundWrote')}>
                {pair(one.rows, ({ written }) => written, words)}
              </td>
              <td data-label={words.sentence('debrief.roundHad')}>
                {pair(one.rows, ({ had }) => had, words)}
              </td>
              <td data-label={words.sentence('debrief.roundTruth')}>
                {pair(one.rows, ({ truth }) => truth, words)}
              </td>
              <td data-label={words.sentence('debrief.accepted')}>{acceptedText(one.rows, words)}</td>
            </tr>
          ))}
          {systolic === undefined || diastolic === undefined ? null : (
            <tr className="debrief-total">
              <th scope="row">
                {words.sentence('debrief.roundAverage')}
                <span className="small soft">
                  {words.sentence('debrief.averageOf', {
                    numbers: words.say.allOf(used),
                    count: used.length,
                  })}
                </span>
              </th>
              <td data-label={words.sentence('debrief.roundWrote')}>
                {pair(average, ({ written }) => written, words)}
              </td>
              <td data-label={words.sentence('debrief.roundHad')}>
                {pair(average, ({ had }) => had, words)}
              </td>
              <td data-label={words.sentence('debrief.roundTruth')}>
                {pair(average, ({ truth }) => truth, words)}
              </td>
              <td data-label={words.sentence('debrief.accepted')}>{acceptedText(average, words)}</td>
            </tr>
          )}
        </tbody>
      </table>
      <AverageSays round={round} />
      <Flags flags={flags} />
      {needs.length === 0 && why.length === 0 ? null : (
        <>
          <h3>{words.sentence('debrief.roundNeeds')}</h3>
          <Flags flags={[...why, ...needs]} />
        </>
      )}
    </>
  );
}

/** How far the average lies from what was to be had of the same readings, and from what is true. */
function AverageSays({ round: { average, withinMmHg } }: Pick<RoundProps, 'round'>) {
  const { words } = useApp();
  const [systolic, diastolic] = average;
  if (systolic === undefined || diastolic === undefined)
    return <p>{words.sentence('debrief.averageNone')}</p>;
  const texts =
    systolic.had === null || diastolic.had === null
      ? [words.sentence('debrief.averageNothing')]
      : [
          words.sentence('debrief.averageOff', {
            systolic: systolic.written - systolic.had,
            diastolic: diastolic.written - diastolic.had,
          }),
          averageVerdict(systolic, diastolic, withinMmHg, words),
        ];
  const truth = words.sentence('debrief.averageTruth', {
    systolic: systolic.written - systolic.truth,
    diastolic: diastolic.written - diastolic.truth,
  });
  return <p>{[...texts, truth].join(' ')}</p>;
}

function averageVerdict(
  systolic: RoundAverage,
  diastolic: RoundAverage,
  withinMmHg: number,
  { sentence }: Words,
): string {
  if (systolic.isAccepted === diastolic.isAccepted)
    return sentence(systolic.isAccepted ? 'debrief.averageYes' : 'debrief.averageNot', { withinMmHg });
  const [part, other] = systolic.isAccepted ? [systolic, diastolic] : [diastolic, systolic];
  return sentence('debrief.averageOne', {
    withinMmHg,
    part: sentence(`debrief.${part.of}`),
    other: sentence(`debrief.${other.of}`),
  });
}

function placeOf({ arm, posture }: ReadingOfRound, words: Words): string {
  return words.sentence('pressure.placeIs', {
    side: words.sentence(`pressure.${arm}Side`),
    site: words.sentence('pressure.upper-armSite'),
    posture: words.sentence(posture === 'standing' ? 'pressure.standPosture' : 'pressure.sitPosture'),
  });
}

function inAverage({ isAveraged, leftOut }: ReadingOfRound, words: Words): string {
  return words.sentence(isAveraged ? 'debrief.isAveraged' : `debrief.notAveraged-${leftOut ?? 'rule'}`);
}

function pair<R>(rows: readonly R[], of: (row: R) => number | null, { say }: Words): string {
  const shown = rows.map((row) => {
    const one = of(row);
    return one === null ? '–' : say.number(one);
  });
  return shown.join('/');
}

/** Of both numbers in a word or two; a dash where nothing was written. */
function acceptedText(
  rows: readonly (Pick<ResultRow, 'of' | 'isAccepted'> & Partial<Pick<ResultRow, 'isFar'>>)[],
  { sentence }: Words,
): string {
  const judged = rows.filter(({ isAccepted }) => isAccepted !== null);
  const yes = judged.filter(({ isAccepted, isFar }) => isAccepted === true && isFar !== true);
  if (judged.length === 0) return '–';
  if (yes.length === judged.length) return sentence('debrief.acceptedBoth');
  const [one] = yes;
  if (one === undefined && judged.some(({ isFar }) => isFar === true)) return sentence('debrief.isFar');
  return one === undefined
    ? sentence('debrief.isNotAccepted')
    : sentence('debrief.acceptedOne', { part: sentence(`debrief.${one.of}`) });
}

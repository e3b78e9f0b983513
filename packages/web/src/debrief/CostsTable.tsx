import { PHYSIOLOGY_FIGURES } from '@evenfall/physiology';
import type { Debrief, DebriefRules } from '@evenfall/practice';
import type { Aids } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { costRows } from './costRows.js';
import { insteadText } from './insteadText.js';

type CostsProps = { readonly result: Debrief; readonly rules: DebriefRules; readonly aids: Aids };

/** What each fault cost, the dearest first, each with one thing to do instead; the lines add up as they are shown. */
export function CostsTable({ result, rules, aids }: CostsProps) {
  const { words } = useApp();
  const { costs } = result.costs;
  const cost = (mmHg: number | null) => words.sentence('debrief.cost', { mmHg });
  const ofDiastolic = (mmHg: number | null) => (result.isByFeel ? '–' : cost(mmHg));
  const { rows, rest, total } = costRows(result);
  // Of numbers that nobody wrote nothing moved any.
  if (result.fall === null || (result.entered.systolic === null && result.entered.diastolic === null))
    return null;
  return (
    <section>
      <h2>{words.sentence('debrief.costs')}</h2>
      {costs.length === 0 ? (
        <p>{words.sentence('debrief.noFaults')}</p>
      ) : (
        <>
          <p className="small soft">{words.sentence('debrief.costsHint')}</p>
          <table className="debrief-table debrief-costs">
            <caption className="unseen">{words.sentence('debrief.costs')}</caption>
            <thead>
              <tr>
                {(['fault', 'systolicCost', 'diastolicCost', 'instead'] as const).map((key) => (
                  <th key={key} scope="col">
                    {words.sentence(`debrief.${key}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ code, doInstead, systolic, diastolic }) => (
                <tr key={code}>
                  <th scope="row">
                    {words.sentence(`debrief.fault-${code}`)}
                    <LetDownSays code={code} letDown={result.letDown} />
                  </th>
                  <td data-label={words.sentence('debrief.systolicCost')}>{cost(systolic)}</td>
                  <td data-label={words.sentence('debrief.diastolicCost')}>{ofDiastolic(diastolic)}</td>
                  <td>{insteadText(doInstead, rules, words, aids)}</td>
                </tr>
              ))}
              {rest === null || total === null ? null : (
                <>
                  <tr className="debrief-left">
                    <th scope="row">{words.sentence('debrief.left')}</th>
                    <td data-label={words.sentence('debrief.systolicCost')}>{cost(rest.systolic)}</td>
                    <td data-label={words.sentence('debrief.diastolicCost')}>
                      {ofDiastolic(rest.diastolic)}
                    </td>
                    <td>{leftText(result, words)}</td>
                  </tr>
                  <tr className="debrief-total">
                    <th scope="row">{words.sentence('debrief.total')}</th>
                    <td data-label={words.sentence('debrief.systolicCost')}>{cost(total.systolic)}</td>
                    <td data-label={words.sentence('debrief.diastolicCost')}>
                      {ofDiastolic(total.diastolic)}
                    </td>
                    <td />
                  </tr>
                </>
              )}
            </tbody>
          </table>
          <p className="small soft">{words.sentence(`debrief.${sumKey(result)}`)}</p>
        </>
      )}
    </section>
  );
}

/** What the lines add up to, or why they have no number. */
function sumKey({
  fromNothing,
  isByFeel,
  costs: { costs },
}: Pick<Debrief, 'fromNothing' | 'isByFeel' | 'costs'>) {
  if (fromNothing !== null) return NO_NUMBER[fromNothing];
  const hasGap = costs.some(
    // By feel there is no diastolic that anything could have moved.
    ({ systolic, diastolic }) => systolic === null || (diastolic === null && !isByFeel),
  );
  return hasGap ? 'noNumber' : 'costsSum';
}

const NO_NUMBER = {
  unmeasured: 'noNumberUnmeasured',
  unheard: 'noNumberUnheard',
  unfelt: 'noNumberUnfelt',
} as const;

const LEFT_UNKNOWN = {
  'not-marked': 'leftUnknown',
  'first-not-marked': 'leftFirstUnknown',
  'last-not-marked': 'leftLastUnknown',
} as const;

/** Whose the rest is: of a number that was typed without a mark that is not known. */
function leftText({ conduct }: Pick<Debrief, 'conduct'>, words: Words): string {
  const codes = Object.keys(LEFT_UNKNOWN) as (keyof typeof LEFT_UNKNOWN)[];
  const unknown = codes.find((code) => conduct.some((one) => one.code === code));
  return words.sentence(unknown === undefined ? 'debrief.leftHint' : `debrief.${LEFT_UNKNOWN[unknown]}`);
}

/** Beside a rate that was not the taught one: what it was, and what so long a squeeze does. */
function LetDownSays({ code, letDown }: { readonly code: string } & Pick<Debrief, 'letDown'>) {
  const { words } = useApp();
  if (letDown === null || letDown.seconds === 0 || (code !== 'too-slow' && code !== 'too-fast')) return null;
  const afterSeconds = PHYSIOLOGY_FIGURES.sound.congestedAfterSeconds.value;
  return (
    <span className="small soft debrief-why">
      {words.sentence('debrief.letDownSays', letDown)}
      {letDown.isLong ? `; ${words.sentence('debrief.letDownHeld', { afterSeconds })}` : ''}
    </span>
  );
}

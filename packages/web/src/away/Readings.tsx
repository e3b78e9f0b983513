import { leftForGood } from '@evenfall/clinical';
import type { DecidedReading, SeriesContent, SeriesDecision } from '@evenfall/record';
import { Fragment, type ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';
import { decisionFor } from './decisionFor.js';
import { pressureText, readingTime } from './readingText.js';
import type { LastTried, TrialOf } from './Trial.js';

type ReadingsProps = {
  readonly content: SeriesContent;
  readonly decided: readonly DecidedReading[];
  readonly trial: TrialOf;
  /** Whether who looks may take readings out and put them back. */
  readonly mayDecide: boolean;
  readonly onTrial: (tried: LastTried, decision: SeriesDecision) => void;
  /** What stands under the reading that was touched last while something is tried out; null while nothing is. */
  readonly under: { readonly index: number; readonly box: ReactNode } | null;
};

const COLUMNS = 4;

/** Every reading as it came, with how it stands; each can be taken out or put back by hand. */
export function Readings({ content, decided, trial, mayDecide, onTrial, under }: ReadingsProps) {
  const { words } = useApp();
  const { readings, value } = content;
  const ordered = readings
    .map((reading, place) => ({ reading, index: place + 1 }))
    .toSorted((a, b) => Date.parse(a.reading.at.at) - Date.parse(b.reading.at.at) || a.index - b.index);
  const isMixed = new Set(readings.map(({ how }) => how)).size > 1;
  const isTyped = readings.every(({ how }) => how === 'typed');
  const rows = ordered.map(({ reading, index }) => {
    const dropped = value.dropped.find((one) => one.index === index);
    const byHand = decided.find((one) => one.index === index);
    const forGood = dropped === undefined ? null : leftForGood(dropped.code);
    const isTried = trial.has(index);
    const says = [
      // What a hand took out says so with its reason, once.
      ...(dropped === undefined || (dropped.code === 'rejected' && byHand?.decision === 'out' && !isTried)
        ? []
        : [words.detail(dropped)]),
      ...(byHand === undefined || isTried
        ? []
        : [
            words.sentence(byHand.decision === 'out' ? 'away.takenOut' : 'away.putBack', {
              text: byHand.reason,
            }),
          ]),
      ...(mayDecide && forGood !== null ? [words.sentence(`away.forGood-${forGood}`)] : []),
      ...beside(reading, isMixed, words),
    ].join(' · ');
    return { reading, index, dropped, byHand, forGood, isTried, says };
  });
  return (
    <Scrolling label={words.sentence('away.allReadings')}>
      {isTyped ? <p className="small soft">{words.sentence('away.allTyped')}</p> : null}
      <table className="away-table away-readings">
        <thead>
          <tr>
            <th scope="col">{words.sentence('trend.when')}</th>
            <th scope="col">{words.sentence('trend.pressure')}</th>
            <th scope="col">{words.sentence('trend.pulse')}</th>
            <th scope="col" className="not-printed">
              <span className="unseen">{words.sentence('away.byHand')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ reading, index, dropped, byHand, forGood, isTried, says }) => {
            const time = readingTime(reading, words);
            return (
              <Fragment key={index}>
                <tr
                  className={`${dropped === undefined ? '' : 'away-grey'}${says === '' ? '' : ' away-marked'}`}
                >
                  <th scope="row">{time}</th>
                  <td>{pressureText(reading, words)}</td>
                  <td>{reading.pulse === null ? '–' : words.say.short(reading.pulse)}</td>
                  <td className="not-printed">
                    {!mayDecide || forGood !== null ? null : (
                      <button
                        type="button"
                        className="button button-quiet"
                        aria-pressed={isTried}
                        aria-label={words.sentence(
                          dropped === undefined ? 'away.takeOutOf' : 'away.putBackOf',
                          {
                            text: `${pressureText(reading, words)}, ${time}`,
                          },
                        )}
                        onClick={({ detail }) =>
                          onTrial(
                            { index, isByKey: detail === 0 },
                            decisionFor(dropped?.code ?? null, byHand),
                          )
                        }
                      >
                        {words.sentence(dropped === undefined ? 'away.takeOut' : 'away.putItBack')}
                      </button>
                    )}
                  </td>
                </tr>
                {says === '' ? null : (
                  <tr className={dropped === undefined ? undefined : 'away-grey'}>
                    <td colSpan={COLUMNS} className="away-status small soft">
                      {says}
                    </td>
                  </tr>
                )}
                {under?.index !== index ? null : (
                  <tr className="not-printed">
                    <td colSpan={COLUMNS} className="away-under">
                      {under.box}
                    </td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </Scrolling>
  );
}

const CLOCK_SAID = { skipped: 'series.clockSkipped', twice: 'series.clockTwice' } as const;

/** What must be known of a reading besides its numbers. */
export function beside(
  { how, site, note, asleep, irregular, clock, mended, startedByHand }: SeriesContent['readings'][number],
  isMixed: boolean,
  words: ReturnType<typeof useApp>['words'],
): string[] {
  return [
    ...(isMixed && how === 'typed' ? [words.sentence('away.wasTyped')] : []),
    ...(site === 'wrist' ? [words.sentence('away.atWrist')] : []),
    ...(asleep === true ? [words.sentence('away.wasAsleep')] : []),
    ...(irregular === true ? [words.sentence('series.irregularMark')] : []),
    ...(startedByHand === true ? [words.sentence('series.startedByHandMark')] : []),
    ...(clock === null ? [] : [words.sentence(CLOCK_SAID[clock])]),
    ...(mended === null ? [] : [words.sentence('away.putRight', { text: mended })]),
    ...(note === null ? [] : [`“${note}”`]),
  ];
}

import type { SeriesContent, SeriesValueKept } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { readingTime } from './readingText.js';

type LeftOutProps = {
  readonly content: Pick<SeriesContent, 'readings' | 'refused'> & { readonly value: SeriesValueKept };
  /** Whether it is said elsewhere on the page how many rows were refused. */
  readonly isRefusedSaid?: boolean;
};

/** What is not in the mean, by reason, with the readings it holds for; and the rows that were refused. */
export function LeftOut({ content: { readings, refused, value }, isRefusedSaid = false }: LeftOutProps) {
  const { words } = useApp();
  const { dropped } = value;
  const all = dropped.length + refused.length;
  if (all === 0) return null;
  const details = [...new Set(dropped.map((one) => words.detail(one)))];
  return (
    <>
      <h3>{words.sentence('away.leftOut', { readings: all })}</h3>
      <ul className="away-left-out">
        {details.map((detail) => {
          const ofDetail = dropped.filter((one) => words.detail(one) === detail);
          const times = ofDetail.flatMap(({ index }) => {
            const reading = readings[index - 1];
            return reading === undefined ? [] : [readingTime(reading, words)];
          });
          return (
            <li key={detail}>
              {detail}
              <span className="small soft">
                {' '}
                {words.sentence('away.readingsAt', {
                  readings: times.length,
                  parts: times.slice(0, MOST_SHOWN),
                })}
              </span>
            </li>
          );
        })}
        {refused.length === 0 ? null : (
          <li>
            {isRefusedSaid
              ? words.sentence('away.refusedSaid')
              : words.sentence('away.refusedRows', { rows: refused.length })}
          </li>
        )}
      </ul>
    </>
  );
}

/** Whether every reading is in the mean and every row was read. */
export function isNothingLeftOut({ refused, value }: LeftOutProps['content']): boolean {
  return value.dropped.length + refused.length === 0;
}

const MOST_SHOWN = 4;

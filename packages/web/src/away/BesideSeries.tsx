import { APART_BY_THEMSELVES } from '@evenfall/clinical';
import { type ChartedSeries, compareSeries, type SeriesValueKept } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Field } from '../parts/Field.js';
import { Scrolling } from '../parts/Scrolling.js';
import { signedText } from './readingText.js';

type BesideProps = {
  readonly series: ChartedSeries;
  readonly value: SeriesValueKept;
  readonly others: readonly ChartedSeries[];
};

const PARTS = ['mean', 'morning', 'evening', 'day', 'night'] as const;

/** This series beside another one of the person, the earlier first: before and after something was changed. */
export function BesideSeries({ series, value, others }: BesideProps) {
  const { words } = useApp();
  const [chosen, setChosen] = useState('');
  if (others.length === 0) return null;
  const other = others.find(({ id }) => id === chosen);
  const name = ({ content, from, until }: ChartedSeries) =>
    words.sentence(content.of === 'home' ? 'away.homeTitle' : 'away.recordingTitle', {
      from: dayText(from, words),
      until: dayText(until, words),
    });
  return (
    <section
      className={other === undefined ? 'not-printed' : undefined}
      aria-label={words.sentence('away.besideTitle')}
    >
      <h2>{words.sentence('away.besideTitle')}</h2>
      <Field label={words.sentence('away.besideWhich')}>
        {(control) => (
          <select {...control} value={chosen} onChange={({ target }) => setChosen(target.value)}>
            <option value="">{words.sentence('away.besideNone')}</option>
            {others.map((one) => (
              <option key={one.id} value={one.id}>
                {name(one)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {other === undefined ? null : (
        <Compared
          first={other.until <= series.from ? other : { ...series, value }}
          second={other.until <= series.from ? { ...series, value } : other}
          name={name}
        />
      )}
    </section>
  );
}

type ComparedProps = {
  readonly first: ChartedSeries;
  readonly second: ChartedSeries;
  readonly name: (series: ChartedSeries) => string;
};

function Compared({ first, second, name }: ComparedProps) {
  const { words } = useApp();
  const compared = compareSeries(
    { of: first.content.of, value: first.value },
    { of: second.content.of, value: second.value },
  );
  const whole = (value: number | null) => (value === null ? '–' : words.say.number(value));
  const pair = (of: 'first' | 'second', { systolic, diastolic }: ComparedMeans) =>
    `${whole(systolic[of])}/${whole(diastolic[of])}`;
  const moved = ({ systolic, diastolic }: ComparedMeans) =>
    `${signedText(systolic.difference, words, 0)}/${signedText(diastolic.difference, words, 0)}`;
  const treated = ({ content }: ChartedSeries) =>
    content.treated === null
      ? words.sentence('away.treated-unknown')
      : words.sentence(content.treated ? 'report.medicineTaken' : 'report.medicineNone');
  const notes = (one: ChartedSeries) => (one.content.note === null ? '' : `; “${one.content.note}”`);
  const sure = changeText(first, second, compared.mean.systolic.difference, words);
  return (
    <>
      {compared.isLike ? null : <p className="notice">{words.sentence('away.besideUnlike')}</p>}
      <Scrolling label={words.sentence('away.besideTitle')}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              <th scope="col">{name(first)}</th>
              <th scope="col">{name(second)}</th>
              <th scope="col">{words.sentence('away.laterMinusEarlier')}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{words.sentence('away.besideReadings')}</th>
              <td>{restsOn(first, words)}</td>
              <td>{restsOn(second, words)}</td>
              <td />
            </tr>
            <tr>
              <th scope="row">{words.sentence('report.medicines')}</th>
              <td>{`${treated(first)}${notes(first)}`}</td>
              <td>{`${treated(second)}${notes(second)}`}</td>
              <td />
            </tr>
            {PARTS.flatMap((part) => {
              const means = compared[part];
              if (means === null) return [];
              return (
                <tr key={part}>
                  <th scope="row">{words.sentence(`series.${part}`)}</th>
                  <td>{pair('first', means)}</td>
                  <td>{pair('second', means)}</td>
                  <td>{moved(means)}</td>
                </tr>
              );
            })}
            <tr>
              <th scope="row">{words.sentence('away.pulse')}</th>
              <td>{whole(compared.mean.pulse.first)}</td>
              <td>{whole(compared.mean.pulse.second)}</td>
              <td>{signedText(compared.mean.pulse.difference, words, 0)}</td>
            </tr>
          </tbody>
        </table>
      </Scrolling>
      {sure === null ? null : <p className="small">{sure}</p>}
    </>
  );
}

type ComparedMeans = ReturnType<typeof compareSeries>['mean'];

/** How many readings a mean is of, and on how many days at home. */
function restsOn({ value }: ChartedSeries, words: Words): string {
  return value.days === null
    ? words.sentence('away.count', { readings: value.used })
    : words.sentence('away.besideCount', { readings: value.used, days: value.days });
}

/** How far two such means of one person lie apart by themselves, as it was published; null where they are not alike. */
function changeText(
  first: ChartedSeries,
  second: ChartedSeries,
  difference: number | null,
  words: Words,
): string | null {
  if (first.content.of !== second.content.of || difference === null) return null;
  return first.content.of === 'home'
    ? words.sentence('away.changeHome', APART_BY_THEMSELVES.home)
    : words.sentence('away.changeAwake', APART_BY_THEMSELVES.ambulatory);
}

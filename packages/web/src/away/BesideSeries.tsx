import { type ChartedSeries, compareSeries, type SeriesValueKept } from '@evenfall/record';
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
const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;

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
  const number = (value: number | null) => (value === null ? '–' : words.say.number(value, 1));
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
            {PARTS.flatMap((part) => {
              const means = compared[part];
              if (means === null) return [];
              return MEASURES.map((one) => (
                <tr key={`${part} ${one}`}>
                  <th scope="row">
                    {words.sentence(`series.${part}`)}, {words.sentence(`away.${one}`)}
                  </th>
                  <td>{number(means[one].first)}</td>
                  <td>{number(means[one].second)}</td>
                  <td>{signedText(means[one].difference, words)}</td>
                </tr>
              ));
            })}
          </tbody>
        </table>
      </Scrolling>
    </>
  );
}

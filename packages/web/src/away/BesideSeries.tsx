import { APART_BY_THEMSELVES } from '@evenfall/clinical';
import { type ChartedSeries, compareSeries, type InForce, type SeriesValueKept } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Field } from '../parts/Field.js';
import { Scrolling } from '../parts/Scrolling.js';
import { besideText, signedText } from './readingText.js';
import { limitsOf } from './ShortResult.js';

type BesideProps = {
  readonly series: ChartedSeries;
  readonly value: SeriesValueKept;
  readonly others: readonly ChartedSeries[];
  /** The rules of the version that a series names. */
  readonly rulesFor: (series: ChartedSeries) => InForce;
};

const PARTS = ['mean', 'morning', 'evening', 'day', 'night'] as const;

/** This series beside another one of the person, the earlier first: before and after something was changed. */
export function BesideSeries({ series, value, others, rulesFor }: BesideProps) {
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
          rulesFor={rulesFor}
        />
      )}
    </section>
  );
}

type ComparedProps = Pick<BesideProps, 'rulesFor'> & {
  readonly first: ChartedSeries;
  readonly second: ChartedSeries;
  readonly name: (series: ChartedSeries) => string;
};

function Compared({ first, second, name, rulesFor }: ComparedProps) {
  const { words } = useApp();
  const compared = compareSeries(
    { of: first.content.of, value: first.value },
    { of: second.content.of, value: second.value },
  );
  const whole = (value: number | null) => (value === null ? '–' : words.say.number(value));
  const limits = (one: ChartedSeries, part: (typeof PARTS)[number]) =>
    limitsOf(one.content.of, part === 'day' || part === 'night' ? part : 'mean', rulesFor(one));
  /** Both means of a part and how the second moved; each stands on its own side of the limit of its series. */
  const cells = (part: (typeof PARTS)[number], { systolic, diastolic }: ComparedMeans) => {
    const [a, b] = [limits(first, part), limits(second, part)];
    const upper = besideText(systolic.first, systolic.second, [a.systolic, b.systolic], words);
    const lower = besideText(diastolic.first, diastolic.second, [a.diastolic, b.diastolic], words);
    return (['first', 'second', 'moved'] as const).map((one) => `${upper[one]}/${lower[one]}`);
  };
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
                  {cells(part, means).map((text, at) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: first, second and what lies between
                    <td key={at}>{text}</td>
                  ))}
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

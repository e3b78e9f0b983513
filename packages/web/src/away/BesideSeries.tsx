import { type ChartedSeries, type InForce, type SeriesValueKept, twoSeries } from '@evenfall/record';
import { besideSaid } from '@evenfall/report';
import { useEffect, useRef, useState } from 'react';
import { useSearch } from 'wouter';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Field } from '../parts/Field.js';
import { Scrolling } from '../parts/Scrolling.js';
import { besideIn } from './besideHref.js';
import { SavePdf } from './SavePdf.js';

type BesideProps = {
  readonly person: string;
  readonly series: ChartedSeries;
  readonly value: SeriesValueKept;
  readonly others: readonly ChartedSeries[];
  /** The rules of the version that a series names. */
  readonly rulesFor: (series: ChartedSeries) => InForce;
};

/** This series beside another one of the person, the earlier first: before and after something was changed. One in error is beside none. */
export function BesideSeries({ person, series, value, others, rulesFor }: BesideProps) {
  const { words } = useApp();
  const asked = besideIn(useSearch());
  const [chosen, setChosen] = useState(asked);
  const heading = useRef<HTMLHeadingElement>(null);
  // Whoever came for both sees both: after the page has gone to its own head.
  useEffect(() => {
    if (asked === '') return;
    const drawn = requestAnimationFrame(() => {
      heading.current?.focus({ preventScroll: true });
      heading.current?.scrollIntoView();
    });
    return () => cancelAnimationFrame(drawn);
  }, [asked]);
  if (series.isInError || others.length === 0) return null;
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
      <h2 ref={heading} tabIndex={-1} className="away-beside">
        {words.sentence('away.besideTitle')}
      </h2>
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
        <>
          <Compared one={{ ...series, value }} other={other} name={name} rulesFor={rulesFor} />
          <div className="buttons not-printed">
            <SavePdf person={person} series={series.id} beside={other.id} />
          </div>
        </>
      )}
    </section>
  );
}

type ComparedProps = Pick<BesideProps, 'rulesFor'> & {
  readonly one: ChartedSeries;
  readonly other: ChartedSeries;
  readonly name: (series: ChartedSeries) => string;
};

function Compared({ one, other, name, rulesFor }: ComparedProps) {
  const { words } = useApp();
  const { first, second, compared } = twoSeries(one, other, rulesFor);
  const named = (of: typeof first) => ({ ...of, name: name(of.series) });
  const { table, beside, unlike, sure } = besideSaid(
    { first: named(first), second: named(second), compared },
    words,
  );
  const [, ...headings] = table.columns;
  return (
    <>
      {unlike === null ? null : <p className="notice">{unlike}</p>}
      <Scrolling label={table.caption}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              {headings.map((heading) => (
                <th key={heading} scope="col">
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(([heading, ...cells]) => (
              <tr key={heading}>
                <th scope="row">{heading}</th>
                {cells.map((text, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: first, second and what lies between
                  <td key={at}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
      {sure === null ? null : <p className="small">{sure}</p>}
      {beside.map((line) => (
        <p key={line} className="small soft">
          {line}
        </p>
      ))}
    </>
  );
}

import { type SeriesContent, seriesAbout } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { readingTime } from './readingText.js';

/** How a series was taken, as the head of its PDF says it: what nobody said is a line on paper to write on. */
export function AboutSeries({ content }: { readonly content: SeriesContent }) {
  const { words } = useApp();
  const { devices, arms, zones } = seriesAbout(content);
  const { treated, note } = content;
  const ordered = content.readings.toSorted((a, b) => Date.parse(a.at.at) - Date.parse(b.at.at));
  const [first, last] = [ordered[0], ordered.at(-1)];
  const dates =
    first === undefined || last === undefined
      ? ''
      : words.sentence('report.fromTo', {
          from: readingTime(first, words, false),
          to: readingTime(last, words, false),
        });
  const zone = zones.join(', ');
  const rows = [
    { key: 'measuredOn', text: zone === '' ? dates : words.sentence('report.zoneOf', { dates, zone }) },
    { key: 'arm', text: arms.map((arm) => words.sentence(`facts.${arm}`)).join(', ') },
    { key: 'device', text: devices.join(', ') },
    {
      key: 'medicines',
      text: treated === null ? '' : words.sentence(treated ? 'report.medicineTaken' : 'report.medicineNone'),
    },
  ] as const;
  return (
    <dl className="away-about small" aria-label={words.sentence('away.howTaken')}>
      {rows.map(({ key, text }) => (
        <div key={key} className={text === '' ? 'printed-only away-blank' : undefined}>
          <dt>{words.sentence(`report.${key}`)}</dt>
          <dd>{text}</dd>
        </div>
      ))}
      {note === null ? null : (
        <div>
          <dt>{words.sentence('away.note')}</dt>
          <dd>“{note}”</dd>
        </div>
      )}
    </dl>
  );
}

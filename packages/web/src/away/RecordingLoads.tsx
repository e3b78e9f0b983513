import type { AnsweredRecording, InForce } from '@evenfall/record';
import { periodLoadText } from '@evenfall/report';
import { useApp } from '../app/context.js';

type LoadsProps = Pick<AnsweredRecording, 'result'> & { readonly rules: InForce['ambulatoryRules'] };

/** How much of the readings of a period lies at its limit or over, and the area over it. */
export function Loads({ result, rules }: LoadsProps) {
  const { words } = useApp();
  const found = (['day', 'night'] as const).flatMap((period) => {
    const load = result.load[period];
    const text = periodLoadText(period, load, rules, words);
    return load === null || text === null ? [] : [{ period, text, area: load.excessArea }];
  });
  if (found.length === 0) return null;
  return (
    <section aria-label={words.sentence('series.load')}>
      <h2>{words.sentence('series.load')}</h2>
      <ul className="away-left-out">
        {found.map(({ period, text, area }) => (
          <li key={period}>
            {text}
            {area.systolic === null || area.diastolic === null
              ? ''
              : `; ${words.sentence('away.area', { systolic: area.systolic, diastolic: area.diastolic })}`}
          </li>
        ))}
      </ul>
    </section>
  );
}

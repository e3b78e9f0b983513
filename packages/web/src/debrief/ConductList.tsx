import type { Conduct, DebriefRules } from '@evenfall/practice';
import { useApp } from '../app/context.js';
import { conductText } from './conductText.js';
import { insteadText } from './insteadText.js';

type ConductProps = { readonly conduct: readonly Conduct[]; readonly rules: DebriefRules };

/** What was left out or overdone, whether it cost anything or not, each with one thing to do instead. */
export function ConductList({ conduct, rules }: ConductProps) {
  const { words } = useApp();
  if (conduct.length === 0) return null;
  return (
    <section>
      <h2>{words.sentence('debrief.conduct')}</h2>
      <ul className="debrief-conduct">
        {conduct.map((one) => (
          <li key={one.code}>
            <strong>{conductText(one, words)}.</strong> {insteadText(one.doInstead, rules, words)}
          </li>
        ))}
      </ul>
    </section>
  );
}

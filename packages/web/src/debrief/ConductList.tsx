import type { Conduct, DebriefRules } from '@evenfall/practice';
import type { Aids } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { conductText } from './conductText.js';
import { isOfCount } from './countText.js';
import { insteadText } from './insteadText.js';

const RATES = ['pulse', 'apex', 'breaths'] as const;

type ConductProps = {
  readonly conduct: readonly Conduct[];
  readonly rules: DebriefRules;
  readonly aids: Aids;
};

/** What was left out or overdone, whether it cost anything or not, each with one thing to do instead. */
export function ConductList({ conduct, rules, aids }: ConductProps) {
  const { words } = useApp();
  // What is of a count is said beside it.
  const others = conduct.filter((one) => !RATES.some((of) => isOfCount(one, of)));
  if (others.length === 0) return null;
  return (
    <section>
      <h2>{words.sentence('debrief.conduct')}</h2>
      <ul className="debrief-conduct">
        {others.map((one) => (
          <li key={one.code}>
            <strong>{conductText(one, words)}.</strong> {insteadText(one.doInstead, rules, words, aids)}
          </li>
        ))}
      </ul>
    </section>
  );
}

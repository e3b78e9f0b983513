import { publishedSource } from '@evenfall/words';
import { useApp } from '../app/context.js';
import type { ActNowSaid } from './allOpen.js';

type ActNowListProps = {
  readonly alerts: readonly ActNowSaid[];
  /** Where the screen is small: what to do stands open, the rest of it on paper alone. */
  readonly isSourceFolded?: boolean;
};

/** What somebody must act on now: each with where its limit comes from, and that local protocol may have another. */
export function ActNowList({ alerts, isSourceFolded = false }: ActNowListProps) {
  const { words } = useApp();
  return (
    <ul className="flags">
      {alerts.map(({ condition, figures, confirmLocally, source }) => (
        <li key={condition}>
          {words.detail({ code: condition, figures })}
          <span className={isSourceFolded ? 'small soft printed-only' : 'small soft'}>
            {' '}
            {[publishedSource(source), confirmLocally ? words.sentence('cautions.confirmLocally') : null]
              .flatMap((part) => (part === null ? [] : [part.replace(/\.?$/, '.')]))
              .join(' ')}
          </span>
        </li>
      ))}
    </ul>
  );
}

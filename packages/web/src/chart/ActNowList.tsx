import { publishedSource } from '@evenfall/words';
import { useApp } from '../app/context.js';
import type { ActNowSaid } from './allOpen.js';

/** What somebody must act on now: each with where its limit comes from, and that local protocol may have another. */
export function ActNowList({ alerts }: { readonly alerts: readonly ActNowSaid[] }) {
  const { words } = useApp();
  return (
    <ul className="flags">
      {alerts.map(({ condition, figures, confirmLocally, source }) => (
        <li key={condition}>
          {words.detail({ code: condition, figures })}
          <span className="small soft">
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

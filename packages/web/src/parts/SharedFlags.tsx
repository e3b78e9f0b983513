import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';
import type { Shared } from './flagsInCommon.js';

/** What several values have alike, each sentence once, after those that it holds for. */
export function SharedFlags({ shared }: { readonly shared: readonly Shared[] }) {
  const { words } = useApp();
  if (shared.length === 0) return null;
  return (
    <ul className="flags flags-shared">
      {shared.flatMap(({ sign, names, values, isOfAll, flags }) =>
        words.together(flags).map(({ codes, text }) => (
          <li key={`${sign} ${names.join(' ')} ${codes.join(' ')}`}>
            <strong>
              {isOfAll ? words.sentence('review.allOf', { sign, values }) : `${sign} ${names.join(', ')}`}:
            </strong>{' '}
            {unbroken(text)}
          </li>
        )),
      )}
    </ul>
  );
}

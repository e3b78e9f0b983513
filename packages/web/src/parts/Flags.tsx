import type { Flag } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { detailText } from '../app/figuresText.js';

/** Flags and reasons in plain words. */
export function Flags({ flags }: { readonly flags: readonly Flag[] }) {
  const { words } = useApp();
  if (flags.length === 0) return null;
  return (
    <ul className="flags">
      {flags.map((flag) => (
        <li key={flag.code}>{detailText(flag, words)}</li>
      ))}
    </ul>
  );
}

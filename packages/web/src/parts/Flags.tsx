import type { Flag } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';

/** Flags and reasons in plain words; what several ask for alike is said once. */
export function Flags({ flags }: { readonly flags: readonly Flag[] }) {
  const { words } = useApp();
  if (flags.length === 0) return null;
  return (
    <ul className="flags">
      {words.together(flags).map(({ codes, text }) => (
        <li key={codes.join(' ')}>{unbroken(text)}</li>
      ))}
    </ul>
  );
}

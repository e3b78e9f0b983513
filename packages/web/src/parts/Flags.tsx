import type { Flag } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';

type FlagsProps = {
  readonly flags: readonly Flag[];
  /** Whether a voice says them as soon as they come up, as beside a reading that was just taken. */
  readonly isAnnounced?: boolean;
};

/** Flags and reasons in plain words; what several ask for alike is said once. */
export function Flags({ flags, isAnnounced = false }: FlagsProps) {
  const { words } = useApp();
  if (flags.length === 0) return null;
  const list = (
    <ul className="flags">
      {words.together(flags).map(({ codes, text }) => (
        <li key={codes.join(' ')}>{unbroken(text)}</li>
      ))}
    </ul>
  );
  return isAnnounced ? <div role="status">{list}</div> : list;
}

import { type ReactNode, useState } from 'react';
import { useApp } from '../app/context.js';

type RemoveButtonProps = {
  readonly onRemove: () => void;
  /** What would be removed, for a listener who does not see where the button stands. */
  readonly children?: ReactNode;
};

/** Takes something not yet signed out of a round: asked once, since it cannot be had back. */
export function RemoveButton({ onRemove, children }: RemoveButtonProps) {
  const { words } = useApp();
  const [isAsking, setAsking] = useState(false);
  if (!isAsking)
    return (
      <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
        {words.sentence('count.remove')}
        {children}
      </button>
    );
  return (
    <span className="buttons">
      {/* biome-ignore lint/a11y/noAutofocus: the question takes the place of the button that had the focus */}
      <button type="button" className="button button-quiet" autoFocus onClick={() => setAsking(false)}>
        {words.sentence('count.removeNot')}
      </button>
      <button type="button" className="button" onClick={onRemove}>
        {words.sentence('count.removeNow')}
      </button>
    </span>
  );
}

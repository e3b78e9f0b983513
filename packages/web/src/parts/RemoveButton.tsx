import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';

type RemoveButtonProps = {
  readonly onRemove: () => void;
  /** What would be removed, for a listener who does not see where the button stands. */
  readonly children?: ReactNode;
};

/** Takes something not yet signed out of a round. It is not asked about, since it can be put back in one step. */
export function RemoveButton({ onRemove, children }: RemoveButtonProps) {
  const { words } = useApp();
  return (
    <button type="button" className="button button-quiet" onClick={onRemove}>
      {words.sentence('count.remove')}
      {children}
    </button>
  );
}

import { useSyncExternalStore } from 'react';
import { useApp } from '../app/context.js';

/** Says that a newer build of the app is here, and lets a hand take it. */
export function NewerNotice() {
  const { shell, words } = useApp();
  const isHere = useSyncExternalStore(shell.subscribe, shell.isNewerHere);
  if (!isHere) return null;
  return (
    <div className="notices not-printed" role="status">
      <div className="notice">
        <p>{words.sentence('app.newer')}</p>
        <button type="button" className="button" onClick={shell.takeNewer}>
          {words.sentence('app.newerReload')}
        </button>
      </div>
    </div>
  );
}

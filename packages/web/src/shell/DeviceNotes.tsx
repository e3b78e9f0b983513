import { useEffect, useState } from 'react';
import { useApp } from '../app/context.js';

/** What this browser promises about what waits on the device, and the way to a phone. */
export function DeviceNotes() {
  const { store, words } = useApp();
  const [isKept, setKept] = useState<boolean | null>(null);
  useEffect(() => {
    let isHere = true;
    const asking = askToKeep(store.get().kept.askedToKeep === true);
    void asking.then((kept) => {
      if (kept !== null && store.get().kept.askedToKeep !== true)
        store.change((state) => ({ ...state, kept: { ...state.kept, askedToKeep: true } }));
      if (isHere) setKept(kept);
    });
    return () => {
      isHere = false;
    };
  }, [store]);
  return (
    <>
      <a href="/phone" className="button button-quiet">
        {words.sentence('app.onPhone')}
      </a>
      {isKept === null ? null : (
        <p className="small soft">{words.sentence(isKept ? 'app.keptForGood' : 'app.mayGo')}</p>
      )}
    </>
  );
}

/** Whether the browser keeps the store for good; it is asked for that once. Null where it has no such promise. */
async function askToKeep(wasAsked: boolean): Promise<boolean | null> {
  const { storage } = navigator as { storage?: StorageManager };
  if (storage?.persisted === undefined) return null;
  try {
    return (await storage.persisted()) || (!wasAsked && (await storage.persist()));
  } catch {
    return null;
  }
}

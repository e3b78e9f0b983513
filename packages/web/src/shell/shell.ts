/** The app's own files of this build, kept by a service worker; a newer build waits until somebody takes it. */
export type Shell = {
  readonly isNewerHere: () => boolean;
  readonly subscribe: (onChange: () => void) => () => void;
  /** Lets the newer build in and loads the page again. What this device keeps is in the store, not here. */
  readonly takeNewer: () => void;
};

/** The part of a service worker registration that the shell needs. */
export type Workers = {
  /** Registers; calls back whenever a newer worker is installed and waits. */
  readonly watch: (onWaiting: (worker: { postMessage(message: string): void }) => void) => void;
  /** Calls back once another worker is in charge. */
  readonly onTaken: (then: () => void) => void;
  readonly reload: () => void;
};

/** Where there are no service workers, nothing newer is ever here. */
export function createShell(workers: Workers | null): Shell {
  const listeners = new Set<() => void>();
  let waiting: { postMessage(message: string): void } | null = null;
  workers?.watch((worker) => {
    waiting = worker;
    for (const listener of listeners) listener();
  });
  return {
    isNewerHere: () => waiting !== null,
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    takeNewer() {
      if (workers === null || waiting === null) return;
      workers.onTaken(workers.reload);
      waiting.postMessage('take-over');
    },
  };
}

/** How often a page that stays open asks whether a newer build is there. Source: decision of this project. */
const LOOK_MS = 30 * 60_000;

/** The browser's own service workers; null where it has none (plain HTTP in a network, some private windows). */
export function deviceWorkers(): Workers | null {
  if (!('serviceWorker' in navigator)) return null;
  const { serviceWorker } = navigator;
  return {
    watch(onWaiting) {
      const told = (registration: ServiceWorkerRegistration) => {
        // Without a worker in charge this is the first one: there is nothing older than it on the page.
        if (registration.waiting !== null && serviceWorker.controller !== null)
          onWaiting(registration.waiting);
      };
      const registered = (registration: ServiceWorkerRegistration) => {
        told(registration);
        registration.addEventListener('updatefound', () => {
          registration.installing?.addEventListener('statechange', () => told(registration));
        });
        const look = () => void registration.update().catch(() => undefined); // it is asked again
        window.setInterval(look, LOOK_MS);
        document.addEventListener('visibilitychange', () => {
          if (document.visibilityState === 'visible') look();
        });
      };
      // Without it the page works as long as the server is there.
      serviceWorker.register('/serviceWorker.js').then(registered, () => undefined);
    },
    onTaken: (then) => serviceWorker.addEventListener('controllerchange', then, { once: true }),
    reload: () => window.location.reload(),
  };
}

import type { Words } from '@evenfall/words';
import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Cover } from '../cover/cover.js';
import type { Clock } from '../ports/clock.js';
import type { Cue } from '../ports/cue.js';
import type { Ids } from '../ports/ids.js';
import type { KeptPreferences } from '../preferences/preferences.js';
import type { Server } from '../server/server.js';
import type { Shell } from '../shell/shell.js';
import type { SignIn } from '../signIn/signIn.js';
import type { Elsewhere } from '../store/elsewhere.js';
import type { State, Store } from '../store/store.js';

/** What every screen may use, put together once in `main.tsx`. */
export type App = {
  readonly store: Store;
  readonly server: Server;
  /** In the language and the manner of this device. */
  readonly words: Words;
  readonly preferences: KeptPreferences;
  readonly clock: Clock;
  readonly cue: Cue;
  readonly ids: Ids;
  /** This visit: monotonic times of another one mean nothing. */
  readonly session: string;
  readonly program: string;
  /** The build of the app that runs here, and whether a newer one waits. */
  readonly shell: Shell;
  /** Who is signed in on this device, where somebody has to. */
  readonly signIn: SignIn;
  /** Whether this tab is covered, so that nobody beside it reads it. */
  readonly cover: Cover;
  /** The signed rounds of others than this account that wait on this device. */
  readonly waitingElsewhere: (account: string | null) => readonly Elsewhere[];
  /** Sends the signed rounds that wait on this device. */
  readonly sending: { readonly now: () => Promise<void> };
};

export const AppContext = createContext<App | null>(null);

export function useApp(): App {
  const app = useContext(AppContext);
  if (app === null) throw new Error('A screen was drawn outside the app');
  return app;
}

/** A part of the state; the screen is drawn again when it changes. The part must not be made anew each time. */
export function useKept<T>(part: (state: State) => T): T {
  const { store } = useApp();
  return useSyncExternalStore(store.subscribe, () => part(store.get()));
}

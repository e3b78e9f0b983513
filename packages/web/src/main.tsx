import { wordsFor } from '@evenfall/words';
import { createRoot } from 'react-dom/client';
import { AppRoutes, fetchTheRest } from './App.js';
import { type App, AppContext } from './app/context.js';
import { deviceClock } from './ports/clock.js';
import { uuids } from './ports/ids.js';
import { keepSending } from './server/sendWaiting.js';
import { serverBy } from './server/server.js';
import { createShell, deviceWorkers } from './shell/shell.js';
import { createStore, type Shelf } from './store/store.js';
import { keepTab, knownInTab, type TabShelf } from './store/tabShelf.js';
import './styles/tokens.css';
import './styles/base.css';
import './styles/parts.css';
import './styles/people.css';
import './styles/round.css';
import './styles/pressure.css';
import './styles/signs.css';
import './styles/chart.css';
import './styles/trend.css';

/** Browsers that keep nothing throw on the mere asking. */
function deviceShelf(): Shelf | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

function tabShelf(): TabShelf | null {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
}

const store = createStore(deviceShelf(), uuids, knownInTab(tabShelf()));
keepTab(store, tabShelf());
const server = serverBy((path, init) => fetch(path, init));
const words = wordsFor(navigator.language);
const sending = keepSending(
  { store, server, words },
  {
    after: (ms, then) => {
      const timer = window.setTimeout(then, ms);
      return () => window.clearTimeout(timer);
    },
  },
);
const app: App = {
  store,
  server,
  words,
  clock: deviceClock,
  ids: uuids,
  session: uuids(),
  program: __PROGRAM__,
  shell: createShell(deviceWorkers()),
  sending,
};

window.addEventListener('storage', () => store.reread());
window.addEventListener('online', () => void sending.now());
void sending.now();

const page = document.getElementById('page');
if (page === null) throw new Error('The page has no place for the app');
createRoot(page).render(
  <AppContext value={app}>
    <AppRoutes />
  </AppContext>,
);
window.addEventListener('load', fetchTheRest);

import { localeOf, type Words } from '@evenfall/words';
import { createRoot } from 'react-dom/client';
import { Router } from 'wouter';
import { AppRoutes, fetchTheRest } from './App.js';
import { type App, AppContext } from './app/context.js';
import { deviceWords } from './app/deviceWords.js';
import { runEffectsAtOnce } from './app/effectsAtOnce.js';
import { goUnlessHeld, listenForWayBack } from './app/wayBack.js';
import { createCover } from './cover/cover.js';
import { deviceClock } from './ports/clock.js';
import { deviceCue } from './ports/cue.js';
import { uuids } from './ports/ids.js';
import { createPreferences } from './preferences/preferences.js';
import { keepSending } from './server/sendWaiting.js';
import { serverBy } from './server/server.js';
import { createShell, deviceWorkers } from './shell/shell.js';
import { Gate } from './signIn/Gate.js';
import { lastTouched, noteTouched } from './signIn/lastTouched.js';
import { REMEMBERED_KEY, remember, rememberedIn } from './signIn/rememberedIn.js';
import { askingAgain, createSignIn } from './signIn/signIn.js';
import { ownerOf } from './signIn/standing.js';
import { watchIdle } from './signIn/watchIdle.js';
import { takeOn } from './store/beforeAccounts.js';
import { accountsKept, type EmptyableShelf, forgetClosed } from './store/closedAccounts.js';
import { type WholeShelf, waitingElsewhere } from './store/elsewhere.js';
import { askBeforeLeaving } from './store/leaving.js';
import { keepPlace, placeKnown } from './store/placeShelf.js';
import { createStore, type Shelf, shelfKeyOf } from './store/store.js';
import { keepTab, knownInTab, TAB_KEY, type TabShelf } from './store/tabShelf.js';
import './styles/tokens.css';
import './styles/base.css';
import './styles/parts.css';
import './styles/people.css';
import './styles/signIn.css';
import './styles/round.css';
import './styles/review.css';
import './styles/rest.css';
import './styles/pressure.css';
import './styles/gauge.css';
import './styles/second.css';
import './styles/signs.css';
import './styles/chart.css';
import './styles/chartPrint.css';
import './styles/trend.css';
import './styles/handover.css';
import './styles/forced.css';

runEffectsAtOnce();

/** Browsers that keep nothing throw on the mere asking. */
function deviceShelf(): (Shelf & WholeShelf & EmptyableShelf) | null {
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

const recalled = () => rememberedIn(deviceShelf(), Date.now());
const remembered = recalled();
const owner = ownerOf(remembered);
// Of a round under way nothing stays in the tab where nobody is signed in who could go on with it.
if (remembered?.needed === true && owner === null) tabShelf()?.removeItem(TAB_KEY);
const reached = serverBy((path, init) => fetch(path, init));
const signIn = createSignIn({
  server: reached,
  remembered,
  remember: (next, hours) => remember(deviceShelf(), next, Date.now() + hours * 3_600_000),
  touched: () => noteTouched(deviceShelf(), Date.now()),
  accountsKept: () => accountsKept(deviceShelf()),
  forgetClosed: (closed) => forgetClosed(deviceShelf(), closed),
  begin: () => {
    tabShelf()?.removeItem(TAB_KEY);
    window.location.assign('/');
  },
});
const server = askingAgain(reached, () => void signIn.ask());
const inTab = knownInTab(tabShelf());
const place = placeKnown(deviceShelf());
const store = createStore(
  deviceShelf(),
  uuids,
  {
    ...inTab,
    about: inTab.about.value === null ? place.about : inTab.about,
    inForce: inTab.inForce.value === null ? place.inForce : inTab.inForce,
  },
  shelfKeyOf(owner),
);
if (remembered?.current != null) {
  const { agent } = remembered.current;
  // Whoever is signed in measures: nobody charts in the name of somebody else.
  store.change((state) => ({ ...state, kept: { ...state.kept, agent: agent.id } }));
  takeOn(deviceShelf(), store, agent.id);
}
keepTab(store, tabShelf());
keepPlace(store, deviceShelf());
askBeforeLeaving(store.get);
listenForWayBack();
const preferences = createPreferences(deviceShelf());
let words = deviceWords.english(navigator.language);
const sending = keepSending(
  {
    store,
    server,
    get words() {
      return words;
    },
  },
  {
    after: (ms, then) => {
      const timer = window.setTimeout(then, ms);
      return () => window.clearTimeout(timer);
    },
  },
);
const app: Omit<App, 'words'> = {
  store,
  server,
  preferences,
  clock: deviceClock,
  cue: deviceCue(window.AudioContext),
  ids: uuids,
  session: uuids(),
  program: __PROGRAM__,
  shell: createShell(deviceWorkers()),
  signIn,
  cover: createCover(tabShelf()),
  waitingElsewhere: (account) => waitingElsewhere(deviceShelf(), account, signIn.closed()),
  sending,
};

const isLockedAlone = () => {
  const standing = signIn.get();
  return standing.is === 'out' && standing.isUntold === true;
};

window.addEventListener('storage', ({ key }) => {
  store.reread();
  // Somebody else may have signed in in another tab: the cookie is theirs now, and this page is not.
  if (key === REMEMBERED_KEY) void signIn.recall(recalled());
});
// A page that the browser shows again as it was (back, forward) may be that of somebody who left.
window.addEventListener('pageshow', ({ persisted }) => {
  if (persisted) void signIn.recall(recalled());
});
// A device that locked itself tells the server first: nothing is sent for somebody who is not there.
window.addEventListener('online', () => void (isLockedAlone() ? signIn.ask() : sending.now()));
// First, so that a device that was left alone is locked before it asks who it is of.
watchIdle({
  isIn: () => signIn.get().is === 'in',
  lock: () => void signIn.lockAlone(),
  sayUsed: () => void server.call('listAgents', {}),
  nowMs: () => Date.now(),
  lastTouched: () => lastTouched(deviceShelf()),
  noteTouched: (ms) => noteTouched(deviceShelf(), ms),
});
void signIn.ask().then(() => sending.now());
signIn.subscribe(() => {
  if (signIn.get().is === 'in') void sending.now();
});

const page = document.getElementById('page');
if (page === null) throw new Error('The page has no place for the app');
const root = createRoot(page);

/** English where the parts of another language cannot be fetched just now. */
function wordsNow(): Promise<Words> {
  const chosen = preferences.get();
  const locale = localeOf(chosen.language, navigator.languages);
  return deviceWords.load(locale, chosen).catch(() => deviceWords.english(navigator.language, chosen));
}

async function draw(): Promise<void> {
  words = await wordsNow();
  document.documentElement.lang = words.say.locale;
  root.render(
    <AppContext value={{ ...app, words }}>
      <Router aroundNav={goUnlessHeld}>
        <Gate>
          <AppRoutes />
        </Gate>
      </Router>
    </AppContext>,
  );
}

preferences.subscribe(() => void draw());
void draw();
window.addEventListener('load', fetchTheRest);

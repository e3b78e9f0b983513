// Draws the screens of the invented clinic into docs/screens, small, so that a change of looks shows in review.
// `npm run screens`; with a folder (`npm run screens -- FOLDER`) whole and unpressed, to be looked at closely.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { v7 } from 'uuid';
import { freshFolder, startServer } from '../packages/server/prove/serverUnderTest.mjs';
import { ensureBrowser, ensureBuilt, ensureInstalled, root } from './ensure.mjs';

ensureInstalled();
ensureBuilt();
const out = process.argv[2] ?? join(root, 'docs', 'screens');
mkdirSync(out, { recursive: true });
const KIND = process.argv[2] === undefined ? { type: 'jpeg', quality: 50 } : { type: 'png' };
const ending = KIND.type === 'jpeg' ? 'jpg' : 'png';

const SIZES = {
  phone: { width: 390, height: 844 },
  laptop: { width: 1280, height: 800 },
  projector: { width: 1920, height: 1080 },
};
/** Each at these sizes and schemes, or on paper. */
const PHONE = [
  ['phone', 'light'],
  ['phone', 'dark'],
];
const HAND_AND_DESK = [...PHONE, ['laptop', 'light']];
const EVERYWHERE = [...HAND_AND_DESK, ['laptop', 'dark'], ['projector', 'light']];
const ROOM = [
  ['laptop', 'light'],
  ['projector', 'light'],
];

// A part of the screens: `SCREENS=practice,chart`.
const asked = process.env.SCREENS?.split(',') ?? null;

const { folder, remove } = freshFolder();
const server = await startServer(folder, { purpose: 'demo', pages: join(root, 'packages', 'web', 'dist') });
const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: ['--no-sandbox'] });
const at = (path) => `${server.address}${path}`;

const chooseObserver = (page) => page.getByLabel('Who is measuring?').selectOption({ index: 1 });
const openPerson = async (page, name) => {
  await page.goto(at('/'));
  await chooseObserver(page);
  await page.getByRole('link', { name }).first().click();
  await page.getByRole('heading', { name: 'Chart' }).waitFor();
};
const beginRound = async (page) => {
  await openPerson(page, /Rufus Adeyemi/);
  await page.getByRole('button', { name: 'Take a round' }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
};

/** The page of a series of the person who has some: the first whose link says so. */
const openSeries = async (page, says) => {
  await openPerson(page, /Mira Tolland/);
  await page.getByRole('link', { name: says }).first().click();
  await page.locator('svg').first().waitFor();
};
const openDiary = async (page) => {
  await openPerson(page, /Mira Tolland/);
  await page.locator('a[href*="/diary/"]').first().click();
  await page.getByRole('article').waitFor();
};

const openOf = async (page, name, path) => {
  await openPerson(page, name);
  await page.goto(`${page.url().replace(/[#?].*/, '')}${path}`);
};

/** A round with a pulse of 84 and a pressure of 168/102, before it is signed; the clock is moved by hand. */
const toReview = async (page) => {
  await page.clock.install({ time: new Date() });
  await beginRound(page);
  await page.getByRole('button', { name: 'They match' }).click();
  await page.getByRole('button', { name: 'All as it should be' }).click();
  await page.getByText('15 s', { exact: true }).click();
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.clock.runFor(15_100);
  await page.getByLabel('Number counted').fill('21');
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByText('84', { exact: true }).waitFor();
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await page.getByRole('button', { name: 'Go on without feeling' }).click();
  await page.getByRole('button', { name: 'Already taken' }).click();
  await page.locator('.typed-number').fill('168/102');
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  await page.getByRole('link', { name: 'Go on to review' }).click();
  await page.getByRole('button', { name: 'Sign', exact: true }).waitFor();
};

/** An exercise of a virtual observer who talked with the arm too low, kept as the practice room keeps one. Answers its id. */
let exercise = null;
const keepExercise = async () => {
  const { bladderFor, PROPER, SOUND_INSTRUMENT, scenarioOf } = await import('@evenfall/physiology');
  const { demonstrate, GOOD_OBSERVER } = await import('@evenfall/practice');
  const { KINDS } = await import('@evenfall/record');
  const scenario = scenarioOf('quiet-morning');
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const circumstances = { ...PROPER, isTalking: true, armBelowHeartCm: 10 };
  const done = demonstrate(GOOD_OBSERVER, scenario, 1, circumstances, instrument);
  const { agents } = await (await fetch(at('/api/agents'))).json();
  const now = new Date().toISOString().replace(/\.\d+Z$/, '+00:00');
  const entry = {
    ...{
      id: v7(),
      frame: 1,
      book: 'simulated',
      kind: 'exercise',
      schema: KINDS.exercise.newest,
      person: null,
      round: null,
    },
    ...{ session: null, agent: agents[0].id, role: 'observer', device: v7(), sequence: 1, amends: null },
    ...{ measuredAt: { at: now, zone: 'Europe/Lisbon', asEntered: null }, writtenAt: now },
    content: {
      ...done,
      evidence: { ...done.evidence, saysActNow: null },
      aids: { hasHearingAid: false, isAmplified: false, isLoudspeakerVoice: false, hadSound: true },
      judgedBy: { presetVersion: null },
    },
  };
  const answer = await fetch(at('/api/entries'), {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: server.address },
    body: JSON.stringify({ entries: [entry] }),
  });
  if (answer.status !== 201) throw new Error(await answer.text());
  return entry.id;
};

/** Before the cuff goes up, with something done while the person is made ready. */
const toPressure = async (page, ready) => {
  await beginRound(page);
  await page.getByRole('button', { name: 'They match' }).click();
  await ready();
  await page.getByRole('button', { name: 'All as it should be' }).click();
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).click();
};

/** What is drawn: how to get there, and where. */
const SCREENS = [
  ['people', EVERYWHERE, (page) => page.goto(at('/'))],
  ['chart', EVERYWHERE, (page) => openPerson(page, /Rufus Adeyemi/)],
  [
    'trend',
    EVERYWHERE,
    async (page) => {
      await openPerson(page, /Rufus Adeyemi/);
      await page.getByRole('link', { name: 'Trend over time' }).click();
      await page.locator('svg').first().waitFor();
    },
  ],
  [
    'keypad',
    PHONE,
    async (page) => {
      await page.goto(at('/'));
      await chooseObserver(page);
      await page.getByRole('link', { name: 'Type a set' }).first().click();
      await page.getByRole('group', { name: 'Numbers' }).waitFor();
    },
  ],
  ['round', EVERYWHERE, beginRound],
  [
    'rest',
    PHONE,
    async (page) => {
      await toPressure(page, async () => {
        await page.getByRole('button', { name: /Sits down now/ }).click();
      });
      await page.getByText('The cuff goes up when the rest is over.').waitFor();
    },
  ],
  [
    'gauge',
    EVERYWHERE,
    async (page) => {
      await toPressure(page, async () => {});
      await page.getByRole('button', { name: 'Go on without feeling' }).click();
      await page.getByText('Mark each sound').click();
      await page.getByRole('button', { name: 'Pump up now' }).click();
      for (const wait of [600, 900, 0]) {
        await page.keyboard.press('b');
        await page.waitForTimeout(wait);
      }
      await page.getByRole('button', { name: 'Read the gauge' }).click();
      await page.getByLabel('First sound (mmHg)').fill('148');
    },
  ],
  ['review', EVERYWHERE, toReview],
  ['handover', HAND_AND_DESK, (page) => openOf(page, /Greta Lomax/, '/hand-over')],
  ['settings', HAND_AND_DESK, (page) => page.goto(at('/settings'))],
  ['protocol', EVERYWHERE, (page) => page.goto(at('/protocol'))],
  ['equipment', HAND_AND_DESK, (page) => page.goto(at('/equipment'))],
  ['countersign', PHONE, (page) => page.goto(at('/countersign'))],
  ['week', HAND_AND_DESK, (page) => openSeries(page, /At home/)],
  ['recording', HAND_AND_DESK, (page) => openSeries(page, /Over 24 hours/)],
  [
    'practice',
    EVERYWHERE,
    async (page) => {
      await page.goto(at('/'));
      await chooseObserver(page);
      await page.goto(at('/practice/quiet-morning'));
      await page.getByRole('button', { name: /Come in/ }).click();
      await page.getByRole('button', { name: 'Arm', exact: true }).click();
      await page.getByRole('button', { name: 'Lay the tape round the arm' }).click();
    },
  ],
  [
    'debrief',
    HAND_AND_DESK,
    async (page) => {
      exercise ??= await keepExercise();
      await page.goto(at(`/practice/exercises/${exercise}`));
      await page.getByRole('heading', { level: 1, name: /Debrief/ }).waitFor();
    },
  ],
  [
    'room',
    ROOM,
    async (page) => {
      await page.goto(at('/practice/room'));
      await page.getByLabel('Who comes in?').selectOption('stiff-pipe');
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByRole('button', { name: 'Before the first', exact: true }).click();
      await page.getByText(/^The chest piece lies on the artery/).waitFor();
    },
  ],
];

for (const [name, places, reach] of SCREENS) {
  if (asked !== null && !asked.includes(name)) continue;
  for (const [size, scheme] of places) await draw(`${name}-${size}-${scheme}`, size, scheme, reach);
}
const PRINTS = [
  ['chart', (page) => openPerson(page, /Rufus Adeyemi/)],
  ['week', (page) => openSeries(page, /At home/)],
  ['recording', (page) => openSeries(page, /Over 24 hours/)],
  ['diary', openDiary],
  ['card', (page) => page.goto(at('/card'))],
];
for (const [name, reach] of PRINTS) if (asked === null || asked.includes(name)) await print(name, reach);
await browser.close();
await server.stop();
remove();

async function opened(size, scheme, reach) {
  const context = await browser.newContext({
    viewport: SIZES[size],
    colorScheme: scheme,
    locale: 'en-GB',
    timezoneId: 'Europe/Lisbon',
  });
  const page = await context.newPage();
  await reach(page);
  await page.waitForLoadState('networkidle');
  return { page, close: () => context.close() };
}

async function draw(name, size, scheme, reach) {
  const { page, close } = await opened(size, scheme, reach);
  await page.screenshot({ path: join(out, `${name}.${ending}`), ...KIND });
  await close();
}

/** As it comes out of a printer: the first page, in the width of A4. */
async function print(name, reach) {
  const { page, close } = await opened('laptop', 'light', reach);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 794, height: 1123 });
  await page.screenshot({ path: join(out, `${name}-print.${ending}`), ...KIND });
  await close();
}

// The practice room in a browser whose processor is slowed: is the needle drawn in time, does each sound begin by its clock?
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { makePerson, startRig } from '../packages/physiology/dist/index.js';
import { freshFolder, startServer } from '../packages/server/prove/serverUnderTest.mjs';
import { ensureBrowser, root } from '../tools/ensure.mjs';

/** How much slower than this machine the processor is made. Source: aim of this project. */
const SLOWER = 4;
/** A sound begins within this of its time in the model, ms. Source: aim of this project. */
const AIM_SOUND_MS = 1;
/** A step of the model, ms: what is drawn is never nearer to it. */
const TICK_MS = 5;
/** A visit is kept every second; sounds are handed over so long before they are heard, at most. */
const KEPT_MS = 2000;
const AHEAD_MS = 1500;
/** The clock of a sound card moves on by so much at once, ms. */
const CARD_STEP_MS = 12;
/** Pumped up well over the systolic of this person; a stroke of an ordinary hand is at most 15 mmHg. */
const STROKES = 14;
/** Let down until the sounds are well under way: so long, and at least so many of them. */
const LISTEN_MS = 40_000;
const LEAST_SOUNDS = 15;
/** Steps of the valve: some 2 to 3 mmHg a second. */
const TURNS = 7;

const dist = join(root, 'packages', 'web', 'dist');
if (!readdirSync(join(dist, 'assets')).some((name) => name.startsWith('practicePages-')))
  throw new Error('build the pages first');
const { folder, remove } = freshFolder();
const server = await startServer(folder, { purpose: 'demo', pages: dist });
const browser = await chromium.launch({
  executablePath: await ensureBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--autoplay-policy=no-user-gesture-required'],
});
const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
await page.addInitScript(() => {
  // What is handed to the sound card, and when; what was drawn in each frame.
  window.starts = [];
  window.frames = [];
  const { start } = AudioBufferSourceNode.prototype;
  AudioBufferSourceNode.prototype.start = function (when, ...more) {
    window.card = this.context;
    if (when !== undefined && !this.loop)
      window.starts.push({ when, calledAt: this.context.currentTime, long: this.buffer.length });
    return start.call(this, when, ...more);
  };
  window.watch = () => {
    const look = () => {
      const tick = Number(document.querySelector('[data-testid=needle]')?.dataset.tick);
      window.frames.push({ ms: performance.now(), cardMs: 1000 * window.card.currentTime, tick });
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  };
});
await page.goto(`${server.address}/practice/quiet-morning`);
await page.getByRole('button', { name: /Come in/ }).click();
await page.locator('.room-tab-arm').click();
await page
  .locator('.room-cuff')
  .filter({ hasText: /^adult\b/ })
  .click();
await page.getByRole('button', { name: 'Put the chest piece on' }).click();
const session = await page.context().newCDPSession(page);
await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
await page.locator('.bulb').focus();
for (let stroke = 0; stroke < STROKES; stroke++) {
  await page.keyboard.press('Space');
  await page.waitForTimeout(420);
}
for (let turn = 0; turn < TURNS; turn++) await page.keyboard.press('ArrowRight');
await page.evaluate(() => {
  window.starts.length = 0;
  window.watch();
});
await page.waitForTimeout(LISTEN_MS);
await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
await page.waitForTimeout(1500);
const { starts, frames, kept } = await page.evaluate(() => ({
  starts: window.starts,
  frames: window.frames,
  kept: Object.entries(localStorage).find(([key]) => /^evenfall\.practice(\.|$)(?!ears)/.test(key))?.[1],
}));
await browser.close();
await server.stop();
remove();

const { visit } = JSON.parse(kept);
const squeezes = visit.actions.filter(({ kind }) => kind === 'squeeze').length;
const rig = startRig(makePerson(visit.scenario, visit.seed), visit.circumstances, visit.instrument);
// What was handed over last lies ahead of what is kept: the hands are still by then.
const { sounds } = rig.advance(visit.tick + (AHEAD_MS + KEPT_MS) / TICK_MS, visit.actions);
// The offset between card and visit is one number: each sound is held against it by its nearest neighbour in the model.
const model = sounds.map(({ atSeconds }) => atSeconds);
const planned = starts.map(({ when }) => when);
const errors = matched(planned, model);
const late = starts.filter(({ when, calledAt }) => when < calledAt).length;
console.log(
  `${starts.length} sounds handed over, ${late} too late; against the model at worst ${Math.max(...errors).toFixed(3)} ms (aim ${AIM_SOUND_MS} ms)`,
);
const moving = frames.filter(({ tick }) => Number.isFinite(tick));
const gaps = moving.slice(1).map(({ ms }, at) => ms - moving[at].ms);
// By the clock of the sound card, which the visit goes by. The picture furthest ahead says how the two lie.
const ahead = Math.max(...moving.map(({ cardMs, tick }) => tick * 5 - cardMs));
const behind = moving.map(({ cardMs, tick }) => ahead + cardMs - tick * 5);
// Never more than the frame that it was drawn in, or the one before it: beyond that only what the two clocks step by.
const over = behind.slice(1).map((ms, at) => ms - Math.max(gaps[at], gaps[at - 1] ?? 0));
const [frame, long] = [quantile(gaps, 0.5), quantile(gaps, 0.99)];
console.log(
  `${moving.length} pictures, median ${frame.toFixed(1)} ms apart, 99 in 100 under ${long.toFixed(1)} ms; needle behind the model: median ${quantile(behind, 0.5).toFixed(1)} ms, 99 in 100 under ${quantile(behind, 0.99).toFixed(1)} ms; beyond its own frame at worst ${Math.max(0, ...over).toFixed(1)} ms (of which clocks step ${TICK_MS + CARD_STEP_MS} ms)`,
);
console.log(`${squeezes} of ${STROKES} squeezes in the log`);
if (
  starts.length < LEAST_SOUNDS ||
  late > 0 ||
  Math.max(...errors) > AIM_SOUND_MS ||
  squeezes !== STROKES ||
  Math.max(...over) > TICK_MS + CARD_STEP_MS
)
  process.exitCode = 1;

/** For each planned start how far it is from a sound of the model, ms, at the one offset that fits them best. */
function matched(plannedAt, modelAt) {
  let best = plannedAt.map(() => Number.POSITIVE_INFINITY);
  for (const first of modelAt) {
    const offset = first - plannedAt[0];
    const off = plannedAt.map((at) => 1000 * Math.min(...modelAt.map((one) => Math.abs(one - at - offset))));
    if (Math.max(...off) < Math.max(...best)) best = off;
  }
  return best;
}

function quantile(values, share) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}

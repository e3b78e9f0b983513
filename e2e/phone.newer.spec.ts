import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { freshFolder, startServer } from '../packages/server/prove/serverUnderTest.mjs';
import { beginRound, expect, test, typeOnKeypad } from './evenfall.js';

test.use({ isProgramKept: true });

const dist = fileURLToPath(new URL('../packages/web/dist', import.meta.url));

test('a newer Evenfall is said on a page of the older one, waits for a hand, and loses nothing of the round', async ({
  page,
}) => {
  const { folder, remove } = freshFolder();
  const pages = mkdtempSync(join(tmpdir(), 'evenfall-pages-'));
  cpSync(dist, pages, { recursive: true });
  const older = await startServer(folder, { purpose: 'demo', pages });
  const port = Number(new URL(older.address).port);
  await page.goto(older.address);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null)
      await new Promise((resolve) => setTimeout(resolve, 50));
  });
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.locator('.person-line').first().tap();
  await beginRound(page);
  await page.getByText('15 s', { exact: true }).tap();
  await page.getByRole('button', { name: 'Start' }).tap();
  await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 20_000 });
  await typeOnKeypad(page, '19');
  await expect(page.getByText(/over 72, under 80/)).toBeVisible();

  // Another build: its worker and its page differ.
  await older.stop();
  const worker = join(pages, 'serviceWorker.js');
  writeFileSync(worker, readFileSync(worker, 'utf8').replace(/BUILD = "\w+"/, 'BUILD = "another"'));
  const index = join(pages, 'index.html');
  writeFileSync(
    index,
    readFileSync(index, 'utf8').replace('<html lang="en">', '<html lang="en" class="newer">'),
  );
  const newer = await startServer(folder, { purpose: 'demo', pages, port });
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect(page.getByText('A newer Evenfall is here.')).toBeVisible({ timeout: 20_000 });

  // Until somebody takes it, a reload still has the older one whole.
  await page.reload();
  await expect(page.getByText(/over 72, under 80/)).toBeVisible();
  await expect(page.locator('html.newer')).toHaveCount(0);
  await page.getByRole('button', { name: 'Reload to the newer one' }).tap();
  await expect(page.locator('html.newer')).toHaveCount(1);
  await expect(page.getByText(/over 72, under 80/)).toBeVisible();
  await expect(page.getByText('A newer Evenfall is here.')).toHaveCount(0);

  await newer.stop();
  remove();
  rmSync(pages, { recursive: true });
});

import { defineConfig } from '@playwright/test';

/** Chromium as found by tools/ensure.mjs. Its own list of switches: nothing of it asks the network for anything. */
const launchOptions = {
  ...(process.env.CHROME_PATH === undefined ? {} : { executablePath: process.env.CHROME_PATH }),
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

export default defineConfig({
  testDir: '.',
  globalSetup: './demoOnce.ts',
  outputDir: '../.cache/e2e',
  timeout: 150_000,
  // A loaded machine is slow and not wrong.
  expect: { timeout: 15_000 },
  // Most of them wait for a clock of the wall: twice the two processors of a small machine.
  workers: 4,
  forbidOnly: true,
  use: { locale: 'en-GB', timezoneId: 'Europe/Lisbon', launchOptions, trace: 'off' },
  projects: [
    {
      name: 'phone',
      testMatch: /phone\..*\.spec\.ts/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
    { name: 'keyboard', testMatch: /keyboard\.spec\.ts/, use: { viewport: { width: 390, height: 844 } } },
    { name: 'laptop', testMatch: /laptop\..*\.spec\.ts/, use: { viewport: { width: 1280, height: 800 } } },
  ],
});

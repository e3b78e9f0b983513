import { EvenfallServer } from './server.js';

/**
 * Fills the invented clinic once; each file of tests gets a copy of its own. Where it is, is said to the workers by
 * `EVENFALL_E2E_DEMO`.
 */
export default async function demoOnce(): Promise<() => void> {
  const filled = new EvenfallServer({ demo: true });
  await filled.start();
  await filled.rest();
  process.env.EVENFALL_E2E_DEMO = filled.folder;
  return () => filled.remove();
}

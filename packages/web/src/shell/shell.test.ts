import { expect, test } from 'vitest';
import { createShell, type Workers } from './shell.js';

/** A browser's workers, moved by hand. */
function workers() {
  const did: string[] = [];
  let wait: Parameters<Workers['watch']>[0] = () => undefined;
  let take = () => {};
  const by: Workers = {
    watch: (onWaiting) => {
      wait = onWaiting;
    },
    onTaken: (then) => {
      take = then;
    },
    reload: () => did.push('reload'),
  };
  return { by, did, newerWaits: () => wait({ postMessage: (said) => did.push(said) }), taken: () => take() };
}

test('a newer build is said once it waits, and comes only when somebody takes it', () => {
  const { by, did, newerWaits, taken } = workers();
  const shell = createShell(by);
  let told = 0;
  shell.subscribe(() => {
    told += 1;
  });
  shell.takeNewer();
  expect([shell.isNewerHere(), did]).toEqual([false, []]);
  newerWaits();
  expect([shell.isNewerHere(), told, did]).toEqual([true, 1, []]);
  shell.takeNewer();
  expect(did).toEqual(['take-over']);
  taken();
  expect(did).toEqual(['take-over', 'reload']);
});

test('a worker that takes over by itself, as the first one does, loads nothing again', () => {
  const { by, did, taken } = workers();
  createShell(by);
  taken();
  expect(did).toEqual([]);
});

test('a browser without service workers has nothing newer', () => {
  const shell = createShell(null);
  shell.takeNewer();
  expect(shell.isNewerHere()).toBe(false);
});

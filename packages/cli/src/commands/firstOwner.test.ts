import { Writable } from 'node:stream';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import type { Context } from '../command.js';
import { firstOwner } from './firstOwner.js';

const PHRASE = 'a long phrase of several words';

// What is typed while nothing is asked stands on the screen: a terminal echoes it.
test('the pass phrase is asked for before anything is started that takes its time', async () => {
  const asked: string[] = [];
  const next = (what: string, answer: string) => async () => {
    asked.push(what);
    return answer;
  };
  const context = {
    askLine: next('line', 'ada'),
    askSecret: next('secret', PHRASE),
    interrupted: new AbortController().signal,
    words: wordsFor('en-GB'),
    stderr: new Writable({ write: (_chunk, _encoding, done) => done() }),
    env: {},
    get serverMain(): string {
      asked.push('start');
      throw new Error('started');
    },
  } as unknown as Context;
  const record = { purpose: 'clinic', folder: null, account: null } as const;
  await expect(firstOwner(record, context)).rejects.toThrow('started');
  expect(asked).toEqual(['line', 'line', 'secret', 'secret', 'start']);
});

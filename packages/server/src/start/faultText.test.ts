import { expect, test } from 'vitest';
import { withEmbedded } from '../database/testing.js';
import { faultText } from './faultText.js';

test('an error of the database is logged by its code, without the value it quotes', async () => {
  await withEmbedded(async ({ pool }) => {
    const error = await pool
      .query('select $1::int', ['Hester Quillfeather'])
      .catch((thrown: unknown) => thrown);
    expect(String(error)).toContain('Quillfeather'); // what must not reach the log
    expect(faultText(error)).toMatch(/^database error 22P02/);
    expect(faultText(error)).not.toContain('Quillfeather');
  });
}, 30_000);

test('an error of ours keeps its message and place', () => {
  expect(faultText(new Error('entry cannot be read'))).toMatch(/entry cannot be read[\s\S]*faultText\.test/);
});

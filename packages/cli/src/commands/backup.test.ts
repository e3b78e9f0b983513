import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { standIn, testFolder } from '../../testing/standIn.js';
import { typedArgs } from '../../testing/typed.js';

/** The first backup that was ever made (a fixture of the record). */
const WHOLE = readFileSync(new URL('../../../record/fixtures/backup-1.jsonl', import.meta.url), 'utf8');

/** The backup with so many of its counts left without their flags, as a shape that was never released; hash and all. */
function bent(counts: number): { text: string; ids: string[]; lines: number[] } {
  const lines = WHOLE.trimEnd().split('\n');
  const chosen = lines.flatMap((text, at) => (text.includes('"kind":"count"') ? [at] : [])).slice(0, counts);
  const ids = chosen.map((at) => {
    const line = JSON.parse(lines[at] ?? '');
    delete line.entry.content.value.flags;
    lines[at] = JSON.stringify(line);
    return line.entry.id as string;
  });
  const body = lines.slice(0, -1).map((text) => `${text}\n`);
  const trailer = JSON.parse(lines.at(-1) ?? '');
  trailer.sha256 = createHash('sha256').update(body.join('')).digest('hex');
  return { text: `${body.join('')}${JSON.stringify(trailer)}\n`, ids, lines: chosen.map((at) => at + 1) };
}

const serving = (text: string) => standIn((_, response) => void response.end(text));

describe('a backup', () => {
  test('that can be read back is written, checked and said to be', async () => {
    const file = join(await testFolder(), 'clinic.jsonl');
    const { code, stdout, stderr } = await typedArgs(['backup', file], await serving(WHOLE));
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toBe(`${file}: 10 entries of 2 persons written and checked\n`);
    expect([await readFile(file, 'utf8'), (await stat(file)).mode & 0o777]).toEqual([WHOLE, 0o600]);
  });

  test.each([1, 3])(
    'that holds what cannot be read says which (%i), and takes the place of no other',
    async (counts) => {
      const folder = await testFolder();
      const file = join(folder, 'clinic.jsonl');
      await writeFile(file, 'the backup of yesterday');
      const { text, ids, lines } = bent(counts);
      expect(ids).toHaveLength(counts);
      const ended = await typedArgs(['backup', file, '--replace'], await serving(text));
      expect([ended.code, ended.stdout]).toEqual([1, '']);
      expect(ended.stderr).toMatch(
        new RegExp(`^evenfall: ${file}.unchecked: written, and ${counts} entr(y|ies) in it cannot be read`),
      );
      for (const [at, id] of ids.entries())
        expect(ended.stderr).toContain(`${file}.unchecked:${lines[at]}: entry ${id} (count)`);
      expect(ended.stderr).not.toContain('not because of what you typed');
      expect(await readFile(file, 'utf8')).toBe('the backup of yesterday');
      expect(await readFile(`${file}.unchecked`, 'utf8')).toBe(text);
      expect(await readdir(folder)).toEqual(['clinic.jsonl', 'clinic.jsonl.unchecked']);
      const json = await typedArgs(['backup', file, '--replace', '--json'], await serving(text));
      expect([json.code, json.stdout]).toEqual([1, '']);
      expect(json.problems).toHaveLength(counts + 1);
      expect(json.problems[1]).toMatchObject({
        file: `${file}.unchecked`,
        line: lines[0],
        field: '/entry/content/value/flags',
        code: 'unreadable',
        got: ids[0],
      });
    },
  );

  test('that was cut off or changed on its way leaves nothing', async () => {
    const folder = await testFolder();
    for (const text of [
      WHOLE.slice(0, -200),
      WHOLE.replace('"n":63', '"n":64').replace('"n":66', '"n":67'),
    ]) {
      const { code } = await typedArgs(['backup', join(folder, 'clinic.jsonl')], await serving(text));
      expect([code, await readdir(folder)]).toEqual([1, []]);
    }
  });
});

describe('a table', () => {
  const id = '01a2125a-4940-770c-9ce2-a5b538f7b6c8';

  test.each([
    ['0', ''],
    ['1', /^evenfall: 1 entry of this person cannot be read .* left out of the table/],
    ['2', /^evenfall: 2 entries of this person cannot be read .* left out of the table/],
  ] as const)('says on standard error that %s entries are left out', async (unreadable, said) => {
    const server = await standIn((_, response) => {
      response.setHeader('evenfall-unreadable', unreadable);
      response.end('schema\r\n');
    });
    const { code, stdout, stderr } = await typedArgs(['export', '--person', id, '--as', 'csv'], server);
    expect([code, stdout]).toEqual([0, 'schema\r\n']);
    if (said === '') expect(stderr).toBe('');
    else expect(stderr).toMatch(said);
  });

  test('or a text with nothing in it says so on standard error, and is still given', async () => {
    const server = await standIn((_, response) => {
      response.setHeader('evenfall-empty', 'true');
      response.setHeader('evenfall-unreadable', '1');
      response.end('schema\r\n');
    });
    const { code, stdout, stderr } = await typedArgs(['export', '--person', id, '--as', 'csv'], server);
    expect([code, stdout]).toEqual([0, 'schema\r\n']);
    expect(stderr).toMatch(/^evenfall: Nothing was written: a table needs a value/);
    expect(stderr).toContain('1 entry of this person cannot be read');
  });
});

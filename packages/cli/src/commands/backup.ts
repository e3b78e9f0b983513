import { createHash, randomBytes } from 'node:crypto';
import { access, link, open, rename, rm } from 'node:fs/promises';
import { linesOf } from '@evenfall/api';
import { type Refusal, refusal } from '@evenfall/clinical';
import { backupLine, readEntry } from '@evenfall/record';
import type { Problem, Words } from '@evenfall/words';
import { type Answer, refused } from '../answer.js';
import { command } from '../command.js';
import { isUnreadable } from '../input/readInput.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { type FileAndRecord, fileAndRecord, RECORD_OPTIONS, withKeeper } from '../keeper/withKeeper.js';

type Asked = FileAndRecord & { readonly replace: boolean };

/**
 * `evenfall backup FILE`: everything kept, as JSON lines; the file appears only once it is whole and checked. One that holds
 * an entry which cannot be read is kept beside, as `FILE.unchecked`, and takes the place of no other.
 */
export const backup = command<Asked>({
  name: 'backup',
  summary: 'commands.backup',
  options: [...RECORD_OPTIONS, { name: 'replace', kind: 'switch', means: 'options.replace' }],
  operands: { hint: 'FILE', least: 1, most: 1, expected: 'one-file' },
  endsItself: true,

  parse(given, operands) {
    const read = fileAndRecord(given, operands);
    if (!read.ok) return read;
    return { ok: true, value: { ...read.value, replace: given.isOn('replace') } };
  },

  async run({ file, replace, ...record }, context) {
    const problem = (code: 'repeated' | 'contradicts', expected: 'new-file' | 'writable-file'): Answer =>
      refused([context.words.problem(refusal('', code, expected, file), { file })]);
    if (!replace && (await exists(file))) return problem('repeated', 'new-file');
    return await withKeeper(record, context, async (controlSocket) => {
      // A name nobody can have put there before, made anew: a planted file or link is never written to.
      const part = `${file}.${randomBytes(6).toString('hex')}.part`;
      try {
        const written = await writeBackup(controlSocket, part);
        if (written.unread.length > 0) {
          const aside = `${file}.unchecked`;
          await rename(part, aside);
          return { kind: 'unsound', problems: unvouched(aside, written.unread, context.words) };
        }
        if (replace) await rename(part, file);
        else {
          await link(part, file);
          await rm(part);
        }
        const { lines, bytes, sha256 } = written;
        const entries = lines.entry ?? 0;
        const persons = lines.person ?? 0;
        const said = context.words.sentence('commandLine.backedUp', { entries, persons });
        return { kind: 'one', json: { file, bytes, lines, sha256 }, lines: [`${file}: ${said}`] };
      } catch (fault) {
        await rm(part, { force: true });
        if (isUnreadable(fault)) return problem('contradicts', 'writable-file');
        throw fault;
      }
    });
  },
});

/** Writes and flushes the file, readable by its owner alone, then reads it back. */
async function writeBackup(controlSocket: string, part: string) {
  const file = await open(part, 'wx', 0o600);
  try {
    const answer = await controlRequest(controlSocket, 'GET', '/control/backup');
    if (answer.statusCode !== 200)
      throw new Error(`the server answered ${answer.statusCode}: ${await textOf(answer)}`);
    for await (const chunk of answer) await file.write(chunk as Uint8Array);
    await file.sync();
    const bytes = (await file.stat()).size;
    return { bytes, ...(await checked(part)) };
  } finally {
    await file.close();
  }
}

/** An entry in a backup that the record's own reader refuses, and where it stands. */
type Unread = {
  readonly line: number;
  readonly id: string;
  readonly kind: string;
  readonly refusals: readonly Refusal[];
};

type Checked = {
  readonly lines: { readonly [line: string]: number };
  readonly sha256: string;
  readonly unread: readonly Unread[];
};

/** Reads a backup as restoring will: every line by its schema, every entry by its kind, the hash and the end as the trailer says. */
async function checked(path: string): Promise<Checked> {
  const file = await open(path);
  const hash = createHash('sha256');
  const unread: Unread[] = [];
  let at = 0;
  for await (const text of linesOf(file.createReadStream())) {
    at += 1;
    const line = backupLine.parse(JSON.parse(text));
    if (line.line === 'trailer') {
      const sha256 = hash.digest('hex');
      if (sha256 !== line.sha256) throw new Error(`${path} is not what was sent`);
      return { lines: line.lines, sha256, unread };
    }
    if (line.line === 'entry') {
      const read = readEntry(line.entry);
      const { id, kind } = line.entry;
      if (!read.ok) unread.push({ line: at, id: String(id), kind: String(kind), refusals: read.refusals });
    }
    hash.update(`${text}\n`);
  }
  throw new Error(`${path} ends before its last line: the disk may be full`);
}

/** What is wrong with a backup that holds entries which cannot be read, in whole sentences. */
function unvouched(file: string, unread: readonly Unread[], words: Words): Problem[] {
  const nowhere = {
    line: null,
    column: null,
    field: null,
    code: 'unreadable',
    expected: null,
    got: null,
  } as const;
  const named = unread.map(({ line, id, kind, refusals }): Problem => {
    const place = refusals.map((one) => words.problem(one).message).join(' ');
    const message = words.sentence('commandLine.unreadableEntry', { id, kind, place });
    return { ...nowhere, file, line, field: `/entry${refusals[0]?.field ?? ''}`, got: id, message };
  });
  const summary = words.sentence('commandLine.unvouched', { entries: unread.length, file });
  return [{ ...nowhere, file, message: summary }, ...named];
}

async function exists(path: string): Promise<boolean> {
  return await access(path).then(
    () => true,
    () => false,
  );
}

import type { EntryFrame } from '@evenfall/record';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { refusedSigned } from './server.js';

const words = wordsFor('en');
const entries = [{ kind: 'count' }, { kind: 'run' }] as unknown as EntryFrame[];

function refused(field: string, rule: string, code = 'contradicts', said = words) {
  const sent = { field, line: null, code, got: 'child', expected: null, message: field, rule };
  const problem = { status: 422, title: 'refused', detail: null, problems: [sent] };
  return refusedSigned({ ok: false, status: 422, offline: false, problem } as never, entries, said);
}

test('a cuff that is refused is said in plain words, with where it is put right', () => {
  const text = refused('/entries/1/content/evidence/place/cuff/id', 'cuff-of-scheme');
  expect(text).toBe(words.sentence('app.refusedCuff'));
  expect(text).toMatch(/review/);
});

test('another value that is refused is named by what it is of, never by its pointer', () => {
  const text = refused('/entries/1/content/evidence/run/moments', 'pressure', 'missing');
  expect(text).toMatch(/^Pressure: the moments of the run /);
  expect(text).not.toContain('/entries');
});

test('in Spanish no key and no kind of an entry stands in the sentence', async () => {
  const spanish = await loadWords('es');
  const moments = '/entries/1/content/evidence/run/moments/0';
  expect(refused(moments, 'pressure', 'missing', spanish)).toMatch(/«Presión: los momentos del inflado»/);
  for (const at of ['1/content/evidence/run', '1/content/computedBy', '0/content/evidence/count/first']) {
    const said = refused(`/entries/${at}`, 'pressure', 'missing', spanish);
    expect(said).not.toMatch(/\b(run|computedBy|first|count|evidence)\b/);
    expect(said).toMatch(/«(Presión|Lo enviado)»/);
  }
});

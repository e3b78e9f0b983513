import type { EntryFrame, StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { byOrderOfFiles } from './byOrderOfFiles.js';

const value = (id: string, saidAt: string | null) =>
  ({ id, kind: 'reported', content: { saidAt } }) as unknown as StoredEntry;
const changing = (entry: string | null, saidAt: string | null, kind = 'reported') => ({
  frame: { kind, content: { saidAt }, amends: entry === null ? null : { entry } } as unknown as EntryFrame,
});

// FHIR R4, Observation.issued is optional: without it nothing tells which version was said last.
test('a value that changes another goes by the order of files where one of them has no time of its saying', () => {
  const kept = [value('told', '2025-03-01T10:00:00Z'), value('untold', null)];
  expect(byOrderOfFiles([changing('told', '2025-03-02T10:00:00Z')], kept)).toBe(0);
  expect(byOrderOfFiles([changing('told', null)], kept)).toBe(1);
  expect(byOrderOfFiles([changing('untold', '2025-03-02T10:00:00Z')], kept)).toBe(1);
  expect(byOrderOfFiles([changing('untold', null, 'entered-in-error')], kept)).toBe(1);
  // What is new, and what the file itself says twice, changed nothing that was here.
  expect(byOrderOfFiles([changing(null, null), changing('of this file', null)], kept)).toBe(0);
});

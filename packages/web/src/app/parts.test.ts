import { expect, test } from 'vitest';
import { partFileName } from '../../bundling/parts.js';

const nameOf = (name: string, ...moduleIds: string[]) =>
  partFileName({ name, moduleIds: moduleIds.map((id) => `/home/packages/${id}`) } as Parameters<
    typeof partFileName
  >[0]);

test('the file of a part is called by it, whatever else is in it', () => {
  expect(
    nameOf('words~laterPages~round', 'words/src/english/scoreDetails.ts', 'words/src/english/round.ts'),
  ).toBe('assets/round-[hash].js');
  expect(nameOf('goOnPages', 'web/src/round/ReviewPanel.tsx', 'web/src/goOnPages.ts')).toBe(
    'assets/goOnPages-[hash].js',
  );
  expect(nameOf('gatePages', 'web/src/signIn/gatePages.ts')).toBe('assets/gatePages-[hash].js');
  expect(nameOf('words~spanishBedside~index', 'words/src/spanish/spanishBedside.ts')).toBe(
    'assets/spanishBedside-[hash].js',
  );
});

test('a file that several parts share is called so, not by all of their names', () => {
  expect(nameOf('shared~quickPages~goOnPages', 'web/src/round/entries.ts')).toBe('assets/shared-[hash].js');
  expect(nameOf('words~spanishRound~index', 'words/src/spanish/nouns.ts')).toBe('assets/words-[hash].js');
});

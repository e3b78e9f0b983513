import { basename } from 'node:path';
import type { Rolldown } from 'vite';

/** What is fetched as a part, by the file that it is fetched by; the names of parts are those of these files. */
const OF_A_PART =
  /web.src.(?:\w+.)*\w+Pages\.ts$|words.src.english.(?:round|aside|later|practice)\.ts$|words.src.spanish.spanish\w+\.ts$/;

/** Words of a part go with no other: who reads one language fetches no other. */
const WORDS = /words.src.(?:english|spanish)/;

/** Figures ask for nothing: kept apart from what asks for them, no file waits for one that waits for it. */
const FIGURES = /^\0figures:/;

/**
 * What several parts need is fetched as few files: those below this many bytes, before they are made small, are put together.
 * With more of them a part that begins a round waits for what only its end needs, since what is put together is fetched together.
 */
const FEWEST_BYTES = 500;

/**
 * How the app is cut into files: all that the start page needs in one, and what several later parts need in few. Each file is
 * compressed by itself, so that many small ones cost more than they hold.
 */
export const PARTS: Rolldown.OutputOptions['codeSplitting'] = {
  includeDependenciesRecursively: false,
  groups: [
    { name: 'start', tags: ['$initial'], priority: 2 },
    { name: 'words', test: WORDS, entriesAware: true, minShareCount: 2, priority: 1 },
    {
      ...{ name: 'figures', test: FIGURES, priority: 1 },
      ...{ entriesAware: true, entriesAwareMergeThreshold: FEWEST_BYTES, minShareCount: 2 },
    },
    { name: 'shared', entriesAware: true, entriesAwareMergeThreshold: FEWEST_BYTES, minShareCount: 2 },
  ],
};

/** A file that holds a part is called by its name, whoever else asks for what is in it. */
export function partFileName({ name, moduleIds }: Rolldown.PreRenderedChunk): string {
  const part = moduleIds.find((id) => OF_A_PART.test(id));
  return `assets/${part === undefined ? name.split('~')[0] : basename(part, '.ts')}-[hash].js`;
}

import type { Words } from '@evenfall/words';

/** What the person of an exercise is called: a built-in one by its words, one of the place by its own title. */
export function scenarioName(id: string, title: string | null, words: Words): string {
  return title ?? words.title('scenario', id);
}

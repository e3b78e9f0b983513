import type { CategoryResult, Component } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

type Found = Omit<CategoryResult, 'flags' | 'why'>;

/** The rows that say where a pressure falls: the whole, then each number with what else is known of it. */
export function categoryRows(
  found: Found,
  words: Words,
  more: Partial<Record<Component, string>> = {},
): string[][] {
  const { systolicCategory, diastolicCategory, shown } = found;
  return [
    [words.sentence('category.pressure'), wholeOf(found, words)],
    ...numberRow(words.sentence('category.systolic'), shown.systolic, systolicCategory, more.systolic, words),
    ...numberRow(
      words.sentence('category.diastolic'),
      shown.diastolic,
      diastolicCategory,
      more.diastolic,
      words,
    ),
  ];
}

function wholeOf({ category, atLeast, isolated, shown }: Found, words: Words): string {
  const pressure = `${shown.systolic ?? '-'}/${shown.diastolic ?? '-'}`;
  if (category === null) {
    const none = words.sentence('category.fallsInNone', { pressure });
    if (atLeast === null) return none;
    return `${none}; ${words.sentence('category.atLeast', { category: words.title('category', atLeast) })}`;
  }
  const falls = words.sentence('category.falls', { pressure, category: words.title('category', category) });
  if (isolated === null) return falls;
  return `${falls} (${words.sentence('category.raisedAlone', { which: words.title('isolated', isolated) })})`;
}

function numberRow(
  name: string,
  shown: string | null,
  category: string | null,
  more: string | undefined,
  words: Words,
): string[][] {
  if (shown === null || category === null) return [];
  const falls = words.sentence('category.falls', {
    pressure: shown,
    category: words.title('category', category),
  });
  return [[name, more === undefined ? falls : `${falls}, ${more}`]];
}

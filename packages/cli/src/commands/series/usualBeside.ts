import type { AssumptionCode, Flag } from '@evenfall/clinical';
import type { SentenceKey, Words } from '@evenfall/words';

/** An assumption as every answer carries it. */
export function assumption({ code, figures }: Flag<AssumptionCode>, words: Words) {
  const key: SentenceKey = `series.${code}`;
  return { code, detail: words.sentence(key as 'series.office-visits', figures as { cvPercent: number; visits: number }), figures }; // biome-ignore format: one thought
}

import type { Scenario } from '@evenfall/physiology';
import type { Words } from '@evenfall/words';

const GROWN_YEARS = 13;

/** What a scenario is called: its own title, or for a built-in one that of the catalogue. */
export function scenarioTitle({ id, title }: Pick<Scenario, 'id' | 'title'>, words: Words): string {
  return title ?? words.title('scenario', id);
}

/** What it teaches; null where nobody said. */
export function scenarioLesson({ id, lesson }: Pick<Scenario, 'id' | 'lesson'>, words: Words): string | null {
  if (lesson !== null) return lesson;
  const text = words.title('scenarioLesson', id);
  return text === id ? null : text;
}

/** Who comes in, as one sees them. */
export function whoText({ ageYears, sex }: Pick<Scenario, 'ageYears' | 'sex'>, words: Words): string {
  const key = ageYears < GROWN_YEARS ? (sex === 'f' ? 'girl' : 'boy') : sex === 'f' ? 'woman' : 'man';
  return words.sentence(`practice.${key}`, { years: ageYears });
}

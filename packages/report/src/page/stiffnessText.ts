import { type AmbulatoryResult, OUT_OF_OFFICE_FIGURES } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** The stiffness index that was asked for, with what is to be known of it; or why it is not given. */
export function stiffnessText({ stiffness }: Pick<AmbulatoryResult, 'stiffness'>, words: Words): string {
  const { stiffnessLeastReadings, stiffnessLeastR2 } = OUT_OF_OFFICE_FIGURES;
  if (stiffness !== null) return words.sentence('series.stiffnessOf', stiffness);
  const least = { readings: stiffnessLeastReadings.value, r2: stiffnessLeastR2.value };
  return words.sentence('series.stiffnessNone', least);
}

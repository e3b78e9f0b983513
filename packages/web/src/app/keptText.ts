/**
 * What a field keeps of what was typed. The field shows that and nothing else, also where it is what was kept before:
 * then nothing is drawn again, and a sign too many would stand there without being kept.
 */
export function keptText(field: { value: string }, keep: (typed: string) => string): string {
  const kept = keep(field.value);
  if (field.value !== kept) field.value = kept;
  return kept;
}

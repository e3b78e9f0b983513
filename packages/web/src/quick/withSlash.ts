/** Two numbers that were typed with a blank where the slash goes, as they would be with it; null for anything else. Asked and never guessed. */
export function withSlash(text: string): string | null {
  const [, systolic, diastolic, rest = ''] = /^\s*(\d{2,3})\s+(\d{2,3})(\s.*)?$/.exec(text) ?? [];
  if (systolic === undefined || diastolic === undefined || text.includes('/')) return null;
  return `${systolic}/${diastolic}${rest.trimEnd()}`;
}

/** Letters of an id, at most. */
const LONGEST = 40;

/** What somebody is called in files and addresses, from their name; empty where the name has no letter for it. */
export function idFromName(name: string, taken: readonly string[]): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\(.*?\)/g, ' ')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '')
    .slice(0, LONGEST)
    .replace(/-+$/, '');
  if (plain === '' || !taken.includes(plain)) return plain;
  let n = 2;
  while (taken.includes(`${plain}-${n}`)) n += 1;
  return `${plain}-${n}`;
}

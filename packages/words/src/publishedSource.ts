const REFERENCE =
  /(?:bedside|out-of-office) handbook(?:,? appendix [A-Z])?(?: \d+(?:\.\d+)*(?:(?:, | and | to )\d+(?:\.\d+)*)*)?/;
const ASIDE = new RegExp(`\\s*\\(${REFERENCE.source}(?:, [^()]*)?\\)`, 'g');
/** The project's own pages: what they say stays, where they say it goes. */
const OWN_PAGE = /\s*\(?docs\/\w+\.md(?: section)?(?: \d+)?\)?(?:: )?/g;
const WITH_NAMES = new RegExp(`^${REFERENCE.source} \\(([^()]+)\\)$`);

/**
 * A source as somebody at the bedside can look it up: the published works alone. The reference to the project's own
 * handbook stays in the data and in `docs/sources.md`.
 *
 * @returns null where nothing published is named
 * @example publishedSource('NICE NG136 (bedside handbook 3.16); bedside handbook 3.16') // 'NICE NG136'
 */
export function publishedSource(source: string): string | null {
  const named = source
    .replace(ASIDE, '')
    .replace(OWN_PAGE, '')
    .split('; ')
    .map((part) => part.replace(WITH_NAMES, '$1'))
    .filter((part) => !/(?:bedside|out-of-office) handbook/.test(part))
    .map((part) => part.replace(/,? from memory/g, '').trim())
    .filter((part) => part !== '');
  return named.length === 0 ? null : [...new Set(named)].join('; ');
}

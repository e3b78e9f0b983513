import { type Protocol, presetProtocol, protocolDiff, type SectionName } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** What choosing a set of rules for a section would change against what is in force; null where nothing is. */
export function presetHint(
  section: SectionName,
  id: string,
  inForce: Protocol | null,
  words: Words,
): string | null {
  if (inForce === null) return null;
  const read = presetProtocol({ ...inForce.presets, [section]: id });
  if (!read.ok) return null;
  const changed = protocolDiff(inForce, read.value).fields.filter((one) => one.section === section);
  // A value is what counts at the bedside: the same one from another source changes nothing there.
  const count = changed.filter(
    ({ before, after }) => JSON.stringify(before?.value) !== JSON.stringify(after?.value),
  ).length;
  return words.sentence('protocol.presetChanges', { count });
}

import { type AgentStanding, type StoredEntry, standingOf } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** Who did it and in what standing, where that is known: "Ana Ruiz, clinician". */
export function whoText(entry: StoredEntry, agents: readonly AgentStanding[], words: Words): string {
  const who = agents.find(({ id }) => id === entry.agent)?.name ?? words.sentence('chart.unknownAgent');
  const standing = standingOf(entry, agents);
  return standing === null
    ? who
    : words.sentence('chart.by', { who, role: words.sentence(`roles.${standing}`) });
}

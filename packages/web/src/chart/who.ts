import type { Agent, StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** Who did it and in what role: "Ana Ruiz, observer". */
export function whoText(
  { agent, role }: Pick<StoredEntry, 'agent' | 'role'>,
  agents: readonly Agent[],
  words: Words,
): string {
  const who = agents.find(({ id }) => id === agent)?.name ?? words.sentence('chart.unknownAgent');
  return words.sentence('chart.by', { who, role: words.sentence(`roles.${role}`) });
}

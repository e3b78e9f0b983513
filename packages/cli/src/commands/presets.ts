import {
  listPresets,
  type Presets,
  type Protocol,
  presetProtocol,
  type SectionName,
} from '@evenfall/clinical';
import type { PlainKey, Words } from '@evenfall/words';
import type { Item } from '../command.js';
import type { Option } from '../options/option.js';

const presetsOf = (name: SectionName) => listPresets().filter(({ section }) => section === name);

/** An option by which the published rules of a section are chosen. */
export function presetOption(name: string, section: SectionName, means: PlainKey): Option {
  return { name, kind: 'value', means, choices: presetsOf(section).map(({ id }) => id) };
}

/** `--preset ID`: which published rules to count by. */
export const PRESET_OPTION = presetOption('preset', 'count', 'options.preset');

/** The protocol with the presets that were typed, by section; null if none was, and then the conventions hold. */
export function chosenProtocol(typed: { readonly [Name in SectionName]?: string | null }): Protocol | null {
  const chosen = Object.fromEntries(Object.entries(typed).filter(([, id]) => typeof id === 'string'));
  if (Object.keys(chosen).length === 0) return null;
  const found = presetProtocol(chosen as Partial<Presets>);
  // What is refused here was refused by its option, which lists what there is.
  return found.ok ? found.value : null;
}

/** The protocol with the preset of its `count` section that was typed. */
export function protocolOf(preset: string | null): Protocol | null {
  return chosenProtocol({ count: preset });
}

/** The presets of a section as `--list` shows them. */
export function presetItems(
  words: Words,
  section: SectionName = 'count',
  option = PRESET_OPTION.name,
): Item[] {
  return presetsOf(section).map(({ id, source, status }) => ({
    id,
    title: words.title('preset', id),
    source,
    status,
    typed: `--${option} ${id}`,
  }));
}

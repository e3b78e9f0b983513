import { listPresets, type Protocol, presetProtocol } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Item } from '../command.js';
import type { Option } from '../options/option.js';

/** The presets of a count: other sections have their own. */
const PRESETS = listPresets().filter(({ section }) => section === 'count');

/** `--preset ID`: which published rules to count by. */
export const PRESET_OPTION: Option = {
  name: 'preset',
  kind: 'value',
  means: 'options.preset',
  choices: PRESETS.map(({ id }) => id),
};

/** The protocol with the preset of its `count` section that was typed; null if none was, and then the conventions hold. */
export function protocolOf(preset: string | null): Protocol | null {
  if (preset === null) return null;
  const found = presetProtocol({ count: preset });
  if (!found.ok) throw new Error(`The preset ${preset} is listed and cannot be read`);
  return found.value;
}

/** The presets as `--list` shows them. */
export function presetItems(words: Words): Item[] {
  return PRESETS.map(({ id, source, status }) => ({
    id,
    title: words.title('preset', id),
    source,
    status,
    typed: `--preset ${id}`,
  }));
}

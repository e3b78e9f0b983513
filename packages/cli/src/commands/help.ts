import { refusal } from '@evenfall/clinical';
import { type AnyCommand, command } from '../command.js';
import { nearest } from '../options/nearest.js';
import { optionsOf } from '../options/option.js';
import { helpOf, helpOfAll } from '../output/help.js';

/** `evenfall help [COMMAND]`: the same as `--help`. */
export function helpCommand(others: readonly AnyCommand[]): AnyCommand {
  const help: AnyCommand = command<AnyCommand | null>({
    name: 'help',
    summary: 'commands.help',
    options: [],
    operands: { hint: 'COMMAND', least: 0, most: 1 },
    parse(_given, [name]) {
      if (name === undefined) return { ok: true, value: null };
      const all = [...others, help];
      const found = all.find((one) => one.name === name);
      if (found !== undefined) return { ok: true, value: found };
      const choices = [nearest(name, all.map((one) => one.name))]; // biome-ignore format: one thought
      return {
        ok: false,
        refusals: [refusal('command', 'unknown-id', 'nearest-command', name, { choices })],
      };
    },
    run: async (found, { words }) =>
      found === null ? helpOfAll([...others, help], words) : helpOf(found, optionsOf(found), words),
  });
  return help;
}

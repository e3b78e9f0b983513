import { type Refusal, refusal } from '@evenfall/clinical';
import { LANGUAGE_IDS, type Language, loadWords } from '@evenfall/words';
import { type Answer, refused } from './answer.js';
import type { AnyCommand, Context, World } from './command.js';
import { NO_OPERANDS } from './command.js';
import { commands } from './commands/index.js';
import { nearest } from './options/nearest.js';
import { EVERYWHERE, optionsOf, typedName } from './options/option.js';
import { type Read, read } from './options/read.js';
import { deliver, deliverFault, EXIT } from './output/deliver.js';
import { helpOf, helpOfAll } from './output/help.js';
import { listed } from './output/items.js';
import { versionOf } from './output/version.js';
import { unlessInterrupted } from './unlessInterrupted.js';

/**
 * The `evenfall` command: arguments in, streams written, exit code out. Reads nothing that is not in `world`.
 *
 * @param args what was typed after `evenfall`
 */
export async function program(args: readonly string[], world: World): Promise<number> {
  const json = beforeEnd(args).includes('--json');
  const words = await loadWords(languageAsked(args, world.env) ?? 'en');
  try {
    const answer = await answerTo(args, { ...world, words });
    if (answer === null || world.interrupted.aborted) return EXIT.interrupted;
    // Several files are read while their answers are written, so writing can be interrupted too.
    const code = await unlessInterrupted(deliver(answer, json, words, world), world.interrupted);
    return code ?? EXIT.interrupted;
  } catch (fault) {
    return world.interrupted.aborted ? EXIT.interrupted : deliverFault(fault, json, words, world);
  }
}

/** The answer to a command line; null if it was interrupted first. */
async function answerTo(args: readonly string[], context: Context): Promise<Answer | null> {
  const named = context.env[LANGUAGE_VARIABLE] ?? '';
  if (named !== '' && !LANGUAGE_IDS.some((id) => id === named)) {
    return refusedBy([refusal(LANGUAGE_VARIABLE, 'unknown-id', 'one-of', named, { choices: LANGUAGE_IDS })], context); // biome-ignore format: one thought
  }
  const at = args.findIndex((arg, index) => !arg.startsWith('-') && args[index - 1] !== LANGUAGE_OPTION);
  const name = args[at];
  if (name === undefined) return withoutCommand(args, context);
  const command = commands.find((one) => one.name === name);
  if (command === undefined) {
    const choices = [nearest(name, commands.map((one) => one.name))]; // biome-ignore format: one thought
    return refusedBy([refusal('command', 'unknown-id', 'nearest-command', name, { choices })], context);
  }
  return answerOf(command, [...args.slice(0, at), ...args.slice(at + 1)], context);
}

function withoutCommand(args: readonly string[], context: Context): Answer {
  const found = read(args, EVERYWHERE, NO_OPERANDS);
  if (found.given.isOn('help')) return helpOfAll(commands, context.words);
  if (found.given.isOn('version')) return versionOf(context.version);
  const choices = commands.map(({ name }) => name);
  return refusedBy([...found.refusals, refusal('command', 'missing', 'command', null, { choices })], context);
}

async function answerOf(
  command: AnyCommand,
  args: readonly string[],
  context: Context,
): Promise<Answer | null> {
  const options = optionsOf(command);
  const found = read(args, options, command.operands);
  if (found.given.isOn('help')) return helpOf(command, options, context.words);
  if (found.given.isOn('version')) return versionOf(context.version);
  if (command.list !== undefined && found.given.isOn('list')) {
    return listed(command.list(context.words), context.words);
  }
  const ready = command.prepare(found.given, found.operands);
  const parsed = ready.ok
    ? []
    : ready.refusals.map((one) => ({ ...one, field: typedName(options, one.field) }));
  const refusals = together(found, parsed);
  if (!ready.ok || refusals.length > 0) return refusedBy(refusals, context);
  const answer = ready.value(context);
  return command.endsItself === true ? answer : unlessInterrupted(answer, context.interrupted);
}

/** All refusals in order of place; what is wrong with an option itself hides what follows from it. */
function together({ refusals, placeOf }: Read, parsed: readonly Refusal[]): Refusal[] {
  const own = new Set(refusals.filter(({ code }) => code !== 'repeated').map(({ field }) => field));
  const all = [...refusals, ...parsed.filter(({ field }) => !own.has(field))];
  return all.sort((a, b) => placeOf(a.field) - placeOf(b.field));
}

function refusedBy(refusals: readonly Refusal[], { words }: Context): Answer {
  return refused(refusals.map((one) => words.problem(one)));
}

const LANGUAGE_OPTION = '--language';
const LANGUAGE_VARIABLE = 'EVENFALL_LANGUAGE';

/** The language that was asked for, by the option before the variable; null for none, or none that there is (an option is then refused). */
function languageAsked(args: readonly string[], env: World['env']): Language | null {
  const before = beforeEnd(args);
  const joined = before
    .find((arg) => arg.startsWith(`${LANGUAGE_OPTION}=`))
    ?.slice(LANGUAGE_OPTION.length + 1);
  const at = before.indexOf(LANGUAGE_OPTION);
  const typed = joined ?? (at < 0 ? undefined : before[at + 1]) ?? env[LANGUAGE_VARIABLE];
  return LANGUAGE_IDS.find((id) => id === typed) ?? null;
}

function beforeEnd(args: readonly string[]): readonly string[] {
  const end = args.indexOf('--');
  return end < 0 ? args : args.slice(0, end);
}

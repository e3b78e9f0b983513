import { type Parsed, refusal } from '@evenfall/clinical';
import { parseScenario, reportOf, SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import type { Words } from '@evenfall/words';
import type { Item } from '../command.js';
import { jsonOf } from '../input/jsonOf.js';
import { readInput } from '../input/readInput.js';
import { nearest } from '../options/nearest.js';

/** The field of a scenario that is none: the operand as help shows it. */
export const SCENARIO_OPERAND = 'SCENARIO';

/** What is no id of ours is a file: it has a dot or a slash in it, or is standard input. */
const FILE_NAME = /^-$|[./\\]/;

export const namesFile = (name: string): boolean => FILE_NAME.test(name);

/**
 * The scenario of an id of the book, or of a file of one.
 *
 * Errors: `unknown-id` with the nearest id; those of the file, by JSON Pointer.
 */
export async function scenarioNamed(
  name: string,
  stdin: AsyncIterable<Uint8Array>,
): Promise<Parsed<Scenario>> {
  const known = scenarioOf(name);
  if (known !== undefined) return { ok: true, value: known };
  if (!namesFile(name)) {
    const choices = [nearest(name, SCENARIOS.map(({ id }) => id))]; // biome-ignore format: one thought
    return {
      ok: false,
      refusals: [refusal(SCENARIO_OPERAND, 'unknown-id', 'nearest-scenario', name, { choices })],
    };
  }
  const text = await readInput(name, stdin);
  if (!text.ok) return text;
  const json = jsonOf(text.value);
  return json.ok ? parseScenario(json.value) : json;
}

/** The invented people of the book, in its order. */
export function scenarioItems(words: Words, command: string): Item[] {
  return SCENARIOS.map(({ id, ageYears, sex, ...scenario }) => ({
    id,
    title: words.sentence('commandLine.scenarioItem', {
      title: words.title('scenario', id),
      ageYears,
      isWoman: sex === 'f',
      lesson: words.title('scenarioLesson', id),
    }),
    source: 'invented',
    status: 'decision',
    typed: `${command} ${id}`,
    report: reportItems({ id, ...scenario }, words),
  }));
}

/** What a good observer reports of a person, in the order of the book. */
export function reportItems(
  scenario: Parameters<typeof reportOf>[0],
  words: Words,
): NonNullable<Item['report']> {
  return reportOf(scenario).map((code) => ({ code, detail: words.sentence(`counts.report-${code}`) }));
}

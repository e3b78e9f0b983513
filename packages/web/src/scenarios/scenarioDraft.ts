import { type Refusal, refusal } from '@evenfall/clinical';
import { parseScenario, type Scenario, scenarioOf } from '@evenfall/physiology';
import { SCENARIO_FIELDS } from './scenarioFields.js';

/** What stands in each field, by its path. */
export type Draft = Readonly<Record<string, string>>;

const NUMBER = /^[-+]?\d+([.,]\d+)?$/;
const YES = 'yes';
/** Several of a list stand in one text. */
const BETWEEN = ' ';

/** A scenario as the form shows it. */
export function draftOf(scenario: Scenario): Draft {
  const draft: Record<string, string> = {};
  for (const { path } of SCENARIO_FIELDS) draft[path] = textOf(valueAt(scenario, path.split('/')));
  return draft;
}

/** One to be changed under a name of its own: a copy of a built-in one says neither its name nor its id, which is made of the name. */
export function copyOf(scenario: Scenario): Draft {
  return { ...draftOf(scenario), title: '', id: '' };
}

function valueAt(from: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined || from === null || typeof from !== 'object') return from;
  return valueAt((from as Record<string, unknown>)[key], rest);
}

function textOf(value: unknown): string {
  if (value === true) return YES;
  if (Array.isArray(value)) return textOfSeveral(value);
  return value === null || value === undefined || value === false || typeof value === 'object'
    ? ''
    : String(value);
}

/** The ones of a field that holds several, in order. */
export function severalIn(text: string): readonly string[] {
  return text.split(BETWEEN).filter(Boolean);
}

export function textOfSeveral(ids: readonly string[]): string {
  return ids.join(BETWEEN);
}

/** A draft as JSON, as a file carries it. What is blank is left out, what is no number stays as it was typed. */
export function jsonOfDraft(text: (path: string) => string): Record<string, unknown> {
  const json: Record<string, unknown> = { schema: 2 };
  for (const { path, shape } of SCENARIO_FIELDS) {
    const typed = text(path).trim();
    if (typed === '') continue;
    const value =
      shape.is === 'flag'
        ? typed === YES
        : shape.is === 'several'
          ? severalIn(typed)
          : shape.is === 'number' && NUMBER.test(typed)
            ? Number(typed.replace(',', '.'))
            : typed;
    put(json, path.split('/'), value);
  }
  return json;
}

function put(into: Record<string, unknown>, [key, ...rest]: readonly string[], value: unknown): void {
  if (key === undefined) return;
  if (rest.length === 0) {
    into[key] = value;
    return;
  }
  const within = (into[key] ?? {}) as Record<string, unknown>;
  into[key] = within;
  put(within, rest, value);
}

export type ReadDraft = { readonly scenario: Scenario | null; readonly refusals: readonly Refusal[] };

/** What a draft comes to: the scenario, or everything that is wrong with it. One of the place has a name and an id of its own. */
export function readDraft(json: unknown): ReadDraft {
  const read = parseScenario(json);
  const { title, id } = json as { readonly title?: unknown; readonly id?: unknown };
  const refusals = [
    ...(title === undefined ? [refusal('/title', 'missing', 'named-scenario', null)] : []),
    ...(typeof id === 'string' && scenarioOf(id) !== undefined
      ? [refusal('/id', 'contradicts', 'own-scenario-id', id)]
      : []),
    // The id is made of the name: where that is missing, it is the one thing to be said.
    ...(read.ok
      ? []
      : read.refusals.filter(
          ({ field, code }) => title !== undefined || field !== '/id' || code !== 'missing',
        )),
  ];
  return { scenario: read.ok && refusals.length === 0 ? read.value : null, refusals };
}

/** The path of the field at which a refusal stands; of a missing part its first field, of one of several that field. Null: of none. */
export function fieldOf({ field }: Pick<Refusal, 'field'>): string | null {
  const path = field.replace(/^\//, '');
  const found =
    SCENARIO_FIELDS.find((one) => one.path === path) ??
    SCENARIO_FIELDS.find((one) => one.path.startsWith(`${path}/`)) ??
    SCENARIO_FIELDS.find((one) => one.shape.is === 'several' && path.startsWith(`${one.path}/`));
  return found?.path ?? null;
}

/** The id of the element of a field, or of one of several in it. */
export function elementOf(path: string): string {
  return `field-${path.replace(/^\//, '').replaceAll('/', '-')}`;
}

import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import { KINDS, type Kind, type KindName } from '../content/kinds.js';
import { wrongIdentifiers, wrongInClass } from './classRules.js';
import { type Entry, type EntryFrame, entryFrame } from './entry.js';
import { wrongOfPractice } from './practiceRules.js';
import { readFrame } from './readFrame.js';
import { refusalsOf } from './refusals.js';

/**
 * Reads an entry from outside: a request, a backup, a row of the database. Every older frame and schema number is
 * read; a newer one than this program knows is refused by name, never guessed.
 *
 * Errors: every problem of frame and content, at its JSON Pointer.
 */
export function readEntry(input: unknown): Parsed<Entry> {
  const frame = readFrame(input);
  // A frame that is refused may still say what its content should be; then both are judged together.
  const said = ofWhat.safeParse(input);
  const content = said.success ? readContent(said.data) : null;
  const refusals = [
    ...(frame.ok
      ? [...lacking(frame.value), ...wrongInClass(frame.value), ...wrongOfPractice(frame.value)]
      : frame.refusals),
    ...(content === null || content.ok ? [] : content.refusals),
  ];
  if (refusals.length > 0 || !frame.ok || !content?.ok) return { ok: false, refusals };
  const entry = { ...frame.value, content: content.value } as Entry;
  const mixed = wrongIdentifiers(entry);
  return mixed.length > 0 ? { ok: false, refusals: mixed } : { ok: true, value: entry };
}

/** What must be readable of a frame before its content can be. */
const ofWhat = entryFrame.pick({ kind: true, schema: true, content: true }).strip();
type OfWhat = Pick<EntryFrame, 'kind' | 'schema' | 'content'>;

function readContent({ kind, schema, content }: OfWhat): Parsed<unknown> {
  const known: Kind = KINDS[kind];
  if (schema > known.newest) {
    const figures = { newest: known.newest };
    return {
      ok: false,
      refusals: [refusal('/schema', 'unknown-id', 'schema-known', `${kind} ${schema}`, { figures })],
    };
  }
  const shape = known.schemas[schema];
  if (shape === undefined) throw new Error(`kind ${kind} lost its schema ${schema}`);
  const read = shape.safeParse(content);
  return read.success
    ? { ok: true, value: known.upgrade(read.data, schema) }
    : { ok: false, refusals: refusalsOf(read.error, content, '/content') };
}

/** The kinds that stand in a round: what no round holds, nobody could sign. */
const IN_A_ROUND: readonly KindName[] = [
  'count',
  'taps',
  'run',
  'sign',
  'round',
  'act-now-closed',
  'countersigned',
  // Under a round of its own, by which its alerts are closed like those of any other.
  'series',
];

/** What is about a place or a whole class, and so about nobody. */
const ABOUT_NOBODY: readonly KindName[] = [
  'protocol-chosen',
  'equipment',
  'equipment-ended',
  'gauge-logged',
  'class-session',
  'class-session-ended',
  'exercise',
  'scenario',
];

/** What the place measures with: of no person, and kept beside the charts, whatever book it is used in. */
export const EQUIPMENT_KINDS: readonly KindName[] = ['equipment', 'equipment-ended', 'gauge-logged'];

/** Only what is about nobody needs no person: a value without one would stand in no chart. */
function lacking({ kind, book, person, round, amends }: EntryFrame): Refusal[] {
  const isEquipment = EQUIPMENT_KINDS.includes(kind);
  return [
    ...(isEquipment && book !== 'care'
      ? [refusal('/book', 'contradicts', 'choice', book, { choices: ['care'] })]
      : []),
    ...(isEquipment && person !== null ? [refusal('/person', 'contradicts', 'nobody', person)] : []),
    // Equipment that was entered in error has nobody either: what it amends says so (see `wrongAmendments`).
    ...(person === null && !ABOUT_NOBODY.includes(kind) && !(kind === 'entered-in-error' && amends !== null)
      ? [refusal('/person', 'missing', 'person', null)]
      : []),
    ...(round === null && IN_A_ROUND.includes(kind) ? [refusal('/round', 'missing', 'round', null)] : []),
  ];
}

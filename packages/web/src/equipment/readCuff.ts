import { CUFF_SCHEMES, type CuffSchemeId, numberFrom } from '@evenfall/clinical';
import type { CuffNamed } from '@evenfall/record';
import type { Manner } from '@evenfall/words';
import { keptOf } from '../app/typedMeasure.js';

/** Cuffs as typed; `size` is a scheme with one of its cuffs, `aha-2005/adult`. */
export type CuffFields = Readonly<Record<'size' | 'room' | 'pieces' | 'width' | 'length' | 'note', string>>;
export type CuffWrong = Readonly<Partial<Record<'size' | 'pieces' | 'bladder', true>>>;

/** Reads cuffs of a room as typed, lengths in the unit of this device, or says which fields are wrong. */
export function readCuff(
  typed: CuffFields,
  manner: Manner,
): {
  readonly content: CuffNamed | null;
  readonly wrong: CuffWrong;
} {
  const wrong: { -readonly [Field in keyof CuffWrong]: true } = {};
  const [scheme, cuff] = typed.size.split('/');
  const found = CUFF_SCHEMES.find(({ id }) => id === scheme)?.cuffs.find(({ id }) => id === cuff);
  if (found === undefined) wrong.size = true;
  const pieces = numberFrom(typed.pieces.trim());
  if (pieces === null || !Number.isInteger(pieces) || pieces < 1 || pieces > MOST_PIECES) wrong.pieces = true;
  const bladderCm = readBladder(typed, manner);
  if (bladderCm === undefined) wrong.bladder = true;
  if (found === undefined || pieces === null || bladderCm === undefined || wrong.pieces)
    return { content: null, wrong };
  const text = (given: string) => (given.trim() === '' ? null : given.trim());
  return {
    content: {
      what: 'cuff',
      scheme: scheme as CuffSchemeId,
      cuff: found.id,
      room: text(typed.room),
      pieces,
      bladderCm,
      note: text(typed.note),
    },
    wrong,
  };
}

/** As the record takes them. */
const MOST_PIECES = 999;
const LARGEST_BLADDER_CM = 100;

/** Null for as the scheme has it; undefined for what is no bladder. */
function readBladder({ width, length }: CuffFields, manner: Manner): CuffNamed['bladderCm'] | undefined {
  if (width.trim() === '' && length.trim() === '') return null;
  const cm = (text: string) => numberFrom(keptOf({ text: text.trim() }, 'bladderCm', manner));
  const [wide, long] = [cm(width), cm(length)];
  if (wide === null || long === null || wide <= 0 || long <= 0) return undefined;
  if (wide > LARGEST_BLADDER_CM || long > LARGEST_BLADDER_CM) return undefined;
  return { width: wide, length: long };
}

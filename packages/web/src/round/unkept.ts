import type { CountOf } from '@evenfall/clinical';
import {
  type PressureAt,
  type PressureDraft,
  reopenedReading,
  type TypedAs,
} from '../pressure/pressureDraft.js';
import { typedAs } from '../pressure/pressureSteps.js';
import type { RoundDraft } from './draft.js';
import { SIGNS_IN_ORDER } from './measuring.js';

/** The signs of which a number was typed or read back and not kept: it would not be signed with the round. */
export function unkeptNumbers(draft: RoundDraft): readonly (CountOf | 'pressure')[] {
  return [
    ...SIGNS_IN_ORDER.filter((sign) => isCountUnkept(draft, sign)),
    ...(isPressureUnkept(draft.pressure) ? (['pressure'] as const) : []),
  ];
}

/** A number that was opened again and left as it stood is no other one. */
function isCountUnkept(draft: RoundDraft, sign: CountOf): boolean {
  const { measuring, values } = draft[sign];
  if (measuring.at !== 'typing') return false;
  const was = values.find(({ entry }) => entry === measuring.reopened?.entry);
  const kept = was?.kind === 'count' && 'n' in was.count ? String(was.count.n) : '';
  return measuring.typed.trim() !== kept;
}

function isPressureUnkept(pressure: PressureDraft): boolean {
  const { measuring } = pressure;
  const was = reopenedReading(pressure)?.typedAs ?? null;
  switch (measuring.at) {
    case 'typing':
      if (was === null) return isAnythingTyped(measuring);
      return 'marks' in was || textOf(typedAs(measuring)) !== textOf(was);
    case 'reading':
      // Marked in time: it is there to be read back, also while no gauge is typed.
      if (was === null || !('marks' in was)) return true;
      return textOf(measuring) !== textOf(was) || marksOf(measuring.marks) !== marksOf(was.marks);
    default:
      return false;
  }
}

/** The minutes on the feet come from the clock: alone they are nothing typed. */
function isAnythingTyped({ typed, fields }: Extract<PressureAt, { at: 'typing' }>): boolean {
  return (
    typed.trim() !== '' ||
    Object.entries(fields).some(
      ([field, text]) => field !== 'uprightMinutes' && field !== 'lyingMinutes' && text.trim() !== '',
    )
  );
}

function textOf({
  typed = '',
  fields,
  reinflated,
}: Pick<TypedAs, 'fields' | 'reinflated'> & { readonly typed?: string }): string {
  const written = Object.entries(fields)
    .filter(([, text]) => text.trim() !== '')
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return JSON.stringify([typed.trim(), written, reinflated]);
}

function marksOf(marks: readonly { readonly what: string; readonly typed: string }[]): string {
  return JSON.stringify(marks.map(({ what, typed }) => [what, typed.trim()]));
}

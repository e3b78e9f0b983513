import { DIARY_LANGUAGES, DIARY_LIMITS, type DiaryHandedContent } from '@evenfall/record';

/** The fields of the form that hands a diary out, as typed. */
export const DIARY_FIELDS = ['days', 'readings', 'language', 'from', 'dueOn', 'note'] as const;
export type DiaryField = (typeof DIARY_FIELDS)[number];
export type DiaryTyped = Readonly<Record<DiaryField, string>>;

/** What is wrong with a field. */
export type DiaryWrong = Readonly<Partial<Record<DiaryField, 'numberWrong' | 'dayMissing' | 'dueWrong'>>>;

/** Reads the form: the content of an entry, or what is wrong with each field. */
export function readDiary(typed: DiaryTyped): {
  readonly content: DiaryHandedContent | null;
  readonly wrong: DiaryWrong;
} {
  const days = wholeIn(typed.days, DIARY_LIMITS.days);
  const readingsInSitting = wholeIn(typed.readings, DIARY_LIMITS.readingsInSitting);
  const language = DIARY_LANGUAGES.find((one) => one === typed.language);
  const note = typed.note.trim();
  const wrong: DiaryWrong = {
    ...(days === null ? { days: 'numberWrong' as const } : {}),
    ...(readingsInSitting === null ? { readings: 'numberWrong' as const } : {}),
    ...(typed.from === '' ? { from: 'dayMissing' as const } : {}),
    ...(typed.dueOn === ''
      ? { dueOn: 'dayMissing' as const }
      : typed.dueOn < typed.from
        ? { dueOn: 'dueWrong' as const }
        : {}),
  };
  const isRight =
    days !== null && readingsInSitting !== null && language !== undefined && Object.keys(wrong).length === 0;
  if (!isRight) return { content: null, wrong };
  const { from, dueOn } = typed;
  return {
    content: { days, readingsInSitting, language, from, dueOn, note: note === '' ? null : note },
    wrong,
  };
}

/** A whole number from 1 to the most; null for anything else. */
function wholeIn(typed: string, most: number): number | null {
  if (!/^\d{1,3}$/.test(typed.trim())) return null;
  const value = Number(typed);
  return value >= 1 && value <= most ? value : null;
}

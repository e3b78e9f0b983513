import type { FormDraft } from '../store/kept.js';
import { INTAKE_WAYS } from './intakeWays.js';

/** The form in which readings of a person from away are typed on this device. */
export function intakeForm(person: string): string {
  return `away ${person}`;
}

/** A number of a reading in the grid: its day, part of the day, reading and cell (`cellField`). */
const CELL = /^(\d+ (?:morning|evening) \d+) \w+$/;

/** What was written beside a day (`noteField`). */
const NOTE = /^\d+ note$/;

/**
 * How many readings stand half typed in a form that nobody signed; 0 where a table was brought that was not signed, or a note
 * stands beside a day alone. Null where nothing is begun: a day or a time alone is no reading.
 */
export function begunIn(form: FormDraft | undefined): number | null {
  const filled = Object.entries(form?.fields ?? {}).filter(([, text]) => text.trim() !== '');
  const readings = new Set(filled.flatMap(([field]) => CELL.exec(field)?.[1] ?? []));
  if (readings.size > 0) return readings.size;
  const isBegun = ([field]: [string, string]) => NOTE.test(field) || INTAKE_WAYS.some((way) => way === field);
  return filled.some(isBegun) ? 0 : null;
}

import type { Parsed } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { roundFields, statusOf, TEXT_FIELDS, type TextOf } from './roundFields.js';
import { fillTemplate, parseTemplate } from './template.js';

/** The templates that Evenfall brings, in the order in which they are offered. */
export const TEMPLATE_IDS = ['line', 'handover', 'letter'] as const;
export type TemplateId = (typeof TEMPLATE_IDS)[number];

/** A template as it is brought, before anybody changes it. */
export function broughtTemplate(id: TemplateId, words: Words): string {
  return words.sentence(`handover.${id}Template`);
}

/**
 * A round in plain text by a template. What a reader elsewhere could not know stands before it whatever the template
 * says: that nobody here is real, or that the round is not settled.
 *
 * @param notices what every file of the book says (INVENTED, SIMULATED, CLASS)
 */
export function roundText(template: string, of: TextOf, notices: readonly string[]): Parsed<string> {
  const read = parseTemplate(template, TEXT_FIELDS);
  if (!read.ok) return read;
  const { words, round } = of;
  const filled = fillTemplate(read.value, roundFields(of), words.sentence('handover.notKnown'));
  const status = statusOf(round);
  const before = [...notices, ...(status === 'isSigned' ? [] : [words.sentence(`handover.${status}`)])];
  const text = filled.replace(/[ \t]+$/gm, '').trim();
  return { ok: true, value: before.length === 0 ? text : `${before.join(', ')}: ${text}` };
}

import type { Parsed } from '@evenfall/clinical';
import { type ChartRound, notReliedOn } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { roundFields, statusOf, TEXT_FIELDS, type TextField, type TextOf } from './roundFields.js';
import { fieldsOf, fillTemplate, parseTemplate, type Template } from './template.js';

/** The templates that Evenfall brings, in the order in which they are offered. */
export const TEMPLATE_IDS = ['line', 'handover', 'letter'] as const;
export type TemplateId = (typeof TEMPLATE_IDS)[number];

/** A template as it is brought, before anybody changes it. */
export function broughtTemplate(id: TemplateId, words: Words): string {
  return words.sentence(`handover.${id}Template`);
}

/** What is said under a text whose template has no field for it: an alert, whom it was told to, why there is no category. */
const SAID_UNDER = ['actNow', 'told', 'caution'] as const satisfies readonly TextField[];
export type SaidUnder = (typeof SAID_UNDER)[number];

/**
 * Which of what must be said a template leaves out: alerts in a few words say whom they were told to as well, and that no
 * category is given says only who has a field for one.
 */
export function leftOutOf(template: Template<TextField>): readonly SaidUnder[] {
  const named = fieldsOf(template);
  return SAID_UNDER.filter(
    (field) =>
      !named.includes(field) &&
      (field === 'caution' ? named.includes('category') : !named.includes('alerts')),
  );
}

/** As {@link leftOutOf} of a template as it is typed; empty where it cannot be read. */
export function leftOutOfText(template: string): readonly SaidUnder[] {
  const read = parseTemplate(template, TEXT_FIELDS);
  return read.ok ? leftOutOf(read.value) : [];
}

/**
 * A round in plain text by a template. What a reader elsewhere could not know stands before it whatever the template
 * says: that nobody here is real, or that the round is not settled. What they must act on stands under it where the
 * template, which somebody may have kept from before, leaves it out.
 *
 * @param notices what every file of the book says (INVENTED, SIMULATED, CLASS)
 */
export function roundText(template: string, of: TextOf, notices: readonly string[]): Parsed<string> {
  const read = parseTemplate(template, TEXT_FIELDS);
  if (!read.ok) return read;
  const { words, round } = of;
  const fields = roundFields(of);
  const filled = fillTemplate(read.value, fields, words.sentence('handover.notKnown'));
  const status = statusOf(round);
  const before = [...notices, ...(status === 'isSigned' ? [] : [statusText(round, words)])];
  const under = leftOutOf(read.value).flatMap((field) => {
    const said = fields[field];
    if (typeof said !== 'string') return [];
    return [field === 'actNow' ? words.sentence('handover.actNowUnder', { text: said }) : said];
  });
  const text = [filled.replace(/[ \t]+$/gm, '').trim(), ...under].join('\n');
  return { ok: true, value: before.length === 0 ? text : `${before.join(', ')}: ${text}` };
}

/** How far a round is settled; of one that a supervisor did not rely on, that and why, beside what nobody signed. */
function statusText(round: ChartRound, words: Words): string {
  const said = notReliedOn(round);
  const status = statusOf(round);
  const settled = words.sentence(`handover.${status}`);
  if (said === null) return settled;
  const refused = words.sentence('handover.isNotReliedOn', { text: said.content.note });
  // What was not countersigned is what the supervisor said no to.
  return status === 'isPreliminary' ? refused : `${settled}, ${refused}`;
}

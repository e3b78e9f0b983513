import { type CuffRules, NEVER_FACTS } from '@evenfall/clinical';
import { type FactContent, pregnancyWeeksOn } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { dayText } from '../app/times.js';

type About = FactContent['about'];

/**
 * A fact in plain words, as it stands on a day: what, on which side, since when and what it asks of whoever measures.
 * "Left arm: fistula, since 1 Mar 2026 — never use this arm."
 *
 * @param day `YYYY-MM-DD`, local; the weeks of a pregnancy are those of that day
 */
export function factText(fact: FactContent, day: string, rules: CuffRules, words: Words): string {
  const asks = askedBy(fact.about, rules);
  const said = words.sentence('facts.dated', {
    what: whatText(fact, day, words),
    days: daysText(fact, words),
  });
  return asks === null ? said : words.sentence('facts.asks', { said, asks: words.sentence(`facts.${asks}`) });
}

/** From when to when: "since 1 Mar 2026", "1 Mar 2026 to 31 May 2026"; a birth was on its day. */
export function daysText({ about, from, until }: FactContent, words: Words): string {
  const start = dayText(from, words);
  if (about.fact === 'gave-birth') return words.sentence('facts.onDay', { text: start });
  if (until === null) return words.sentence('facts.since', { text: start });
  return until === from
    ? words.sentence('facts.onDay', { text: start })
    : words.sentence('facts.between', { from: start, until: dayText(until, words) });
}

/** What the fact is, without its days. */
export function whatText(fact: FactContent, day: string, words: Words): string {
  const { about } = fact;
  const title = words.title('fact', about.fact);
  switch (about.fact) {
    case 'pregnancy': {
      const weeks = pregnancyWeeksOn(fact, day);
      return weeks === null ? title : words.sentence('facts.weeksIs', { weeks });
    }
    case 'gap':
      return words.sentence('facts.gapIs', { fromMmHg: about.fromMmHg, toMmHg: about.toMmHg });
    case 'usual-cuff':
      return words.sentence('facts.isOf', { what: title, text: words.title('cuff', about.cuff) });
    case 'oxygen-scale-2':
      return words.sentence('facts.scaleIs', { text: about.prescriber });
    case 'reference-sex':
      return words.sentence('facts.isOf', { what: title, text: words.sentence(`facts.${about.sex}`) });
    default:
      if (!('side' in about)) return title;
      return words.sentence('facts.isOf', {
        what: words.sentence(about.side === 'left' ? 'facts.leftArm' : 'facts.rightArm'),
        text: title.charAt(0).toLowerCase() + title.slice(1),
      });
  }
}

type Asks = 'neverThis' | 'betterOther' | 'useThis' | 'notStanding' | 'fullCount' | 'pumpHigher';

/** What a fact asks of whoever measures; null where it asks nothing that the page does not do by itself. */
export function askedBy(about: About, rules: CuffRules): Asks | null {
  switch (about.fact) {
    case 'higher-arm':
      return 'useThis';
    case 'cannot-stand':
      return 'notStanding';
    case 'irregular-rhythm':
      return 'fullCount';
    case 'gap':
      return 'pumpHigher';
  }
  if (!('side' in about)) return null;
  const { fact } = about;
  if (NEVER_FACTS.some((one) => one === fact) || rules.neverFor.some((one) => one === fact))
    return 'neverThis';
  return rules.preferOtherFor.some((one) => one === fact) ? 'betterOther' : null;
}

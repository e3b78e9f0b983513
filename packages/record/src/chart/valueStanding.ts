import { canonicalJson, ROUND_RULE, ROUND_RULES, type RoundRuleId } from '@evenfall/clinical';
import { valueOfRound } from '../content/chartRound.js';
import { type InForce, NOTHING_CHOSEN } from '../content/inForce.js';
import type { RoundContent } from '../content/round.js';
import type { RoundValueKept } from '../content/roundValue.js';
import type { Entry, StoredEntry } from '../entry/entry.js';
import { type ChartRound, signingsOf } from './projectChart.js';

type Signing = StoredEntry & { readonly kind: 'round' };

/** The rules of a protocol version; null for one that is not at hand. */
export type RulesOf = (version: string | null) => InForce | null;

/** The signing of a round that stands; of one in error what was signed; null for a round that arrived without one. */
export function signingOf(round: ChartRound): Signing | null {
  const standing = standingSignings(round)[0] ?? round.signed?.original;
  return standing?.kind === 'round' ? standing : null;
}

/** Whether a value of a round was amended after it was signed, so that what was made of it is no longer what it comes to. */
export function isAmendedSince({ values }: ChartRound): boolean {
  return values.some(({ standing }) => standing !== 'as-signed');
}

/**
 * What a round comes to as its values stand now: as signed, or made again where one was amended since. The signed
 * value stays in its entry. Null where nothing was ever made of it.
 *
 * @param rulesOf the rules of the protocol version that the signing names; null takes what was signed
 */
export function valueStanding(round: ChartRound, rulesOf: RulesOf): RoundValueKept | null {
  const signing = signingOf(round);
  return signing === null ? null : valueUnder(signing, round, newestOf(round), rulesOf);
}

/**
 * Everything that a round comes to, in the order of its signings: once for each that stands, and once more for each
 * value that somebody else's amendment disputes. Where nobody knows which is true, none may hide what another says.
 * Where the rules of its version are not at hand, an amended round is judged by the general rules too; and where the
 * record says of that day what nobody knew at the signing (a pregnancy, a birth), by that as well.
 */
export function valuesStanding(round: ChartRound, rulesOf: RulesOf): readonly RoundValueKept[] {
  return standingSignings(round).flatMap((signing) => {
    const isUnruled = isAmendedSince(round) && rulesOf(signing.content.protocolVersion ?? null) === null;
    return waysToRead(round).flatMap((values) => [
      ...present(valueUnder(signing, round, values, rulesOf)),
      ...(isUnruled ? present(valueUnder(signing, round, values, () => NOTHING_CHOSEN)) : []),
      ...present(valueLearnt(signing, round, values, rulesOf)),
    ]);
  });
}

/**
 * What a reader is shown of what a round comes to: once, or, where amendments disagree, each different result of what
 * they say. Empty where nothing was ever made of it.
 */
export function resultsStanding(round: ChartRound, rulesOf: RulesOf): readonly RoundValueKept[] {
  if (!round.values.some(({ standing }) => standing === 'contested'))
    return present(valueStanding(round, rulesOf));
  const all = valuesStanding(round, rulesOf);
  const texts = all.map((value) => canonicalJson(value));
  return all.filter((_, at) => texts.indexOf(texts[at] as string) === at);
}

/** What a round comes to with what the record says of its day; null where the signing knew as much. */
function valueLearnt(
  signing: Signing,
  round: ChartRound,
  values: ValuesOfRound,
  rulesOf: RulesOf,
): RoundValueKept | null {
  const { evidence, value, protocolVersion, signs }: Partial<RoundContent> = signing.content;
  if (evidence == null || value == null || signs === undefined) return null;
  const { facts } = evidence;
  const isPregnant = round.onDay.isPregnant ?? facts.isPregnant;
  const weeksAfterBirth = facts.weeksAfterBirth ?? round.onDay.weeksAfterBirth;
  if (isPregnant === facts.isPregnant && weeksAfterBirth === facts.weeksAfterBirth) return null;
  const learnt = { ...evidence, facts: { ...facts, isPregnant, weeksAfterBirth } };
  return valueOfRound(
    signs,
    learnt,
    entriesNamed(signs, round, values),
    rulesOf(protocolVersion ?? null) ?? NOTHING_CHOSEN,
    ruleOf(signing),
  );
}

function present<Found>(found: Found | null): readonly Found[] {
  return found === null ? [] : [found];
}

function standingSignings(round: ChartRound): readonly Signing[] {
  return signingsOf(round)
    .flatMap(({ current }) => current.toReversed())
    .filter((entry): entry is Signing => entry.kind === 'round');
}

/** What stands for each value of a round, in order; null for one in error. */
export type ValuesOfRound = readonly (StoredEntry | null)[];

function newestOf({ values }: ChartRound): ValuesOfRound {
  return values.map(({ current }) => current.at(-1) ?? null);
}

/** The values of a round as they may be read: the newest of each, and each other claim of a contested one in its place. */
export function waysToRead(round: ChartRound): readonly [ValuesOfRound, ...ValuesOfRound[]] {
  const newest = newestOf(round);
  const others = round.values.flatMap(({ current }, at) =>
    current.slice(0, -1).map((claim) => newest.with(at, claim)),
  );
  return [newest, ...others];
}

function valueUnder(
  signing: Signing,
  round: ChartRound,
  values: ValuesOfRound,
  rulesOf: RulesOf,
): RoundValueKept | null {
  // Of a round of schema 1, as it was kept, nothing was made.
  const content: Partial<RoundContent> = signing.content;
  const { value, evidence, signs = [], protocolVersion = null } = content;
  if (value == null || evidence == null) return null;
  if (!isAmendedSince(round)) return value;
  const rules = rulesOf(protocolVersion);
  if (rules === null) return value;
  return valueOfRound(signs, evidence, entriesNamed(signs, round, values), rules, ruleOf(signing));
}

/** The version of the rule by which a signing was made: what is amended in it is made again under the same. */
export function ruleOf({ content }: Pick<Signing, 'content'>): RoundRuleId {
  return ROUND_RULES.find((one) => one === content.computedBy?.rule) ?? ROUND_RULE;
}

/** What stands of the entries that a signing names, by itself or by what they amend. */
function entriesNamed(signs: RoundContent['signs'], round: ChartRound, values: ValuesOfRound): Entry[] {
  const named = new Set(signs.flatMap((sign) => ('entries' in sign ? sign.entries : [])));
  // An amendment stands in the place of what it amends: under the id by which it is signed, and at its place in the work.
  return round.values.flatMap(({ original, story }, at): Entry[] => {
    const now = values[at] ?? null;
    const signed = story.find(({ id }) => named.has(id));
    return now === null || signed === undefined
      ? []
      : [{ ...now, id: signed.id, sequence: original.sequence }];
  });
}

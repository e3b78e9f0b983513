import type { ArmFactKind, RoundFacts, Side } from '@evenfall/clinical';
import { gatherAmendments } from '../chart/amendmentTree.js';
import type { FactContent } from '../content/fact.js';
import type { StoredEntry } from '../entry/entry.js';
import { ageInMonths, type Identity } from './identity.js';
import { holdsThen, standingFacts } from './standingFacts.js';

const DAYS_A_WEEK = 7;
const MS_A_DAY = 86_400_000;

/**
 * What bears on a round of a person on a day (`YYYY-MM-DD`, local): their age, the facts that hold then, and whether
 * a pressure is in the chart already. Null is not known; a fact that nobody gave is never taken for its absence where
 * that would matter (a pregnancy), and is taken for it where it cannot (a fistula that nobody knows of bars no arm).
 */
export function roundFactsOf(
  identity: Identity | null,
  entries: readonly StoredEntry[],
  day: string,
): RoundFacts {
  const facts = standingFacts(entries).filter((fact) => holdsThen(fact, day));
  const has = (fact: FactContent['about']['fact']) => facts.some(({ about }) => about.fact === fact);
  const pregnancy = facts.findLast(({ about }) => about.fact === 'pregnancy');
  const birth = facts.findLast(({ about }) => about.fact === 'gave-birth');
  const birthDate = identity?.birthDate ?? null;
  return {
    ageMonths: birthDate === null ? null : ageInMonths(birthDate, day),
    sex: newest(facts, (about) => (about.fact === 'reference-sex' ? about.sex : null)),
    heightCm: newestHeight(entries),
    isPregnant: pregnancy === undefined ? null : true,
    pregnancyWeeks: pregnancy === undefined ? null : pregnancyWeeksOn(pregnancy, day),
    weeksAfterBirth: birth === undefined ? null : weeksBetween(birth.from, day),
    arms: facts.flatMap(({ about }) =>
      'side' in about && about.fact !== 'higher-arm'
        ? [{ kind: about.fact as ArmFactKind, side: about.side }]
        : [],
    ),
    higherArm: newest<Side>(facts, (about) => (about.fact === 'higher-arm' ? about.side : null)),
    cannotStand: has('cannot-stand'),
    hasIrregularRhythm: has('irregular-rhythm'),
    hasTremor: has('tremor'),
    hasPacemaker: has('pacemaker'),
    takesRateSlowingDrug: has('rate-slowing-drug'),
    hasSpinalInjury: has('spinal-injury'),
    oxygenScale: has('oxygen-scale-2') ? 2 : 1,
    isFirstPressure: !entries.some(({ kind }) => kind === 'run'),
  };
}

/** The newest height that was measured and stands; one that was only said or guessed puts no child in a table. */
function newestHeight(entries: readonly StoredEntry[]): number | null {
  const signs = entries.filter(({ kind }) => kind === 'sign' || kind === 'entered-in-error');
  const heights = gatherAmendments(signs).flatMap(({ current }) => {
    const entry = current.at(-1);
    if (entry?.kind !== 'sign') return [];
    const { sign } = entry.content.evidence;
    return sign.of === 'height' && sign.how === 'measured' ? [sign.cm] : [];
  });
  return heights.at(-1) ?? null;
}

function newest<Found>(
  facts: readonly FactContent[],
  read: (about: FactContent['about']) => Found | null,
): Found | null {
  return facts.map(({ about }) => read(about)).findLast((found) => found !== null) ?? null;
}

/** Completed weeks of a pregnancy on a day (`YYYY-MM-DD`, local); null if nobody said, or for another fact. */
export function pregnancyWeeksOn({ about, from }: FactContent, day: string): number | null {
  if (about.fact !== 'pregnancy' || about.weeks === null) return null;
  return about.weeks + weeksBetween(from, day);
}

/** Completed weeks from one calendar day to a later one; days of the calendar have no zone. */
export function weeksBetween(from: string, day: string): number {
  return Math.floor((Date.parse(day) - Date.parse(from)) / MS_A_DAY / DAYS_A_WEEK);
}

import {
  canonicalJson,
  isAtOnceAfter,
  type NotedReading,
  type RoundNotes,
  roundNotes,
} from '@evenfall/clinical';
import { NOTHING_CHOSEN } from '../content/inForce.js';
import type { StoredEntry } from '../entry/entry.js';
import { ageInMonths } from '../person/identity.js';
import { chartedPerMinute } from './chartedPerMinute.js';
import { chartedPressure } from './chartedPressure.js';
import { ofRate } from './ofRate.js';
import type { ChartRound } from './projectChart.js';
import { type RulesOf, ruleOf, signingOf, type ValuesOfRound, waysToRead } from './valueStanding.js';

/**
 * What is said beside a round, from its readings as they stand: made anew each time, of evidence that is kept, and part
 * of no kept value. Where amendments dispute a value, each claim is looked at in its turn, in the round as it is with it,
 * and what any of them asks to be said is said. The ids are those of the entries that stand.
 *
 * @param rulesOf the rules of the version that the signing names; general ones where they are not at hand
 * @param birthDate of the person, `YYYY-MM-DD`, null where nobody knows: where a round came without a signing, which says the
 *   age, and its counts do not
 */
export function notesStanding(round: ChartRound, rulesOf: RulesOf, birthDate: string | null): RoundNotes {
  const signed = signingOf(round);
  const signing = signed?.content;
  const { roundRules } = rulesOf(signing?.protocolVersion ?? null) ?? NOTHING_CHOSEN;
  const evidence = signing?.evidence ?? { ...NOBODY_SAID, facts: { ageMonths: ageOf(round, birthDate) } };
  const { ageMonths } = evidence.facts;
  const { actNow } = roundRules;
  const rule = signed == null ? {} : { rule: ruleOf(signed) };
  const under = { gapSeconds: roundRules.readings.gapSeconds, actNow, ...rule };
  const withHaste = (reading: NotedReading): NotedReading => ({
    ...reading,
    isNextAtOnce: isAtOnceAfter(reading, evidence, actNow),
  });
  return waysToRead(round)
    .map((values) =>
      roundNotes(readingsIn(round, values).map(withHaste), under, pulsesIn(round, values), ageMonths),
    )
    .reduce((all, one) => ({
      ofReading: Object.fromEntries(
        [...new Set([...Object.keys(all.ofReading), ...Object.keys(one.ofReading)])].map((id) => [
          id,
          together(all.ofReading[id] ?? [], one.ofReading[id] ?? []),
        ]),
      ),
      arms: together(all.arms, one.arms),
      standing: together(all.standing, one.standing),
      category: together(all.category, one.category),
      // What one of the claims leaves to be repeated is not said to be.
      repeat: all.repeat === null || one.repeat === null ? null : all.repeat,
      newestFirst: all.newestFirst ?? one.newestFirst,
    }));
}

/** What the signing of a round says of how the person was; of one that came without it nobody said anything. */
const NOBODY_SAID = { features: null, unwell: null };

/** The age at a round without a signing, months: as its counts have it, else by the birth date; null is not known. */
function ageOf({ values }: ChartRound, birthDate: string | null): number | null {
  const entries = values.map(({ original }) => original);
  const counted = entries.flatMap((entry) =>
    entry.kind === 'count' || entry.kind === 'taps'
      ? (entry.content.evidence.circumstances.ageMonths ?? [])
      : [],
  )[0];
  const day = entries[0]?.measuredAt.at.slice(0, 'YYYY-MM-DD'.length);
  if (counted !== undefined || birthDate === null || day === undefined) return counted ?? null;
  return ageInMonths(birthDate, day);
}

type Flags = RoundNotes['arms'];

function together(flags: Flags, more: Flags): Flags {
  const said = flags.map((flag) => canonicalJson(flag));
  return [...flags, ...more.filter((flag) => !said.includes(canonicalJson(flag)))];
}

function readingsIn({ values }: ChartRound, standing: ValuesOfRound): NotedReading[] {
  return values.flatMap(({ original }, at) => {
    const entry = standing[at] ?? null;
    return entry === null ? [] : readingOf(entry, original.sequence);
  });
}

/** @param sequence of the entry that it stands for: an amendment is no later work */
function readingOf(entry: StoredEntry, sequence: number): NotedReading[] {
  const pressure = chartedPressure(entry);
  if (pressure === null || entry.kind !== 'run') return [];
  const { run, place, circumstances } = entry.content.evidence;
  const { uprightMinutes, unwellUpright, lyingMinutes, previous } = circumstances;
  return [
    {
      ...place,
      id: entry.id,
      sequence,
      method: run.method,
      systolic: pressure.systolic,
      diastolic: pressure.diastolicUsed,
      atSeconds: null,
      pulsePerMinute: run.pulsePerMinute,
      uprightMinutes,
      isUnwellUpright: unwellUpright,
      lyingMinutes,
      isMuffledUsed: pressure.diastolicUsed !== null && pressure.diastolicUsed !== pressure.diastolic,
      measuredSeconds: Date.parse(entry.measuredAt.at) / 1000,
      isRestKnown: previous !== null,
    },
  ];
}

function pulsesIn({ values }: ChartRound, standing: ValuesOfRound): number[] {
  return values.flatMap(({ original }, at) => {
    const entry = standing[at] ?? null;
    const isPulse = entry !== null && ofRate(entry) === 'pulse' && chartedPerMinute(entry) !== null;
    return isPulse ? [original.sequence] : [];
  });
}

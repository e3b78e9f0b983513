import { roundTo } from '@evenfall/clinical';
import { type ChartRound, isAmendedSince, signingOf } from '@evenfall/record';
import { beginningText, restText, type Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import { gaugeTexts, type ValueOf } from '../text/valueText.js';
import { category, concept, LOINC } from './concepts.js';
import { judgedOf } from './interpretation.js';
import { notDoneObservations } from './notDoneObservations.js';
import { component } from './pressureParticulars.js';
import { besideId, reference, urn } from './references.js';
import { profileUrl, SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

type Signing = NonNullable<ReturnType<typeof signingOf>>;

/**
 * What a signed round is beside its values: the panel that names them, the mean of its pressures where it has one, and
 * what was not done, with why.
 *
 * @param written ids of the Observations made of its values
 * @param gauges of the place, as they stand now
 */
export function roundObservations(
  round: ChartRound,
  written: readonly string[],
  gauges: ValueOf['gauges'],
  words: Words,
): readonly Observation[] {
  const signing = signingOf(round);
  if (signing === null) return [];
  const mean = meanPressure(round, signing, gauges, words);
  const notDone = notDoneObservations(round, signing, words, (id) => common(round, signing, id));
  const made = [...(mean === null ? [] : [mean]), ...notDone];
  const members = [...written, ...made.map(({ id }) => id as string)];
  return members.length === 0 ? [] : [panel(round, signing, members, words), ...made];
}

function panel(round: ChartRound, signing: Signing, members: readonly string[], words: Words): Observation {
  const { note, begun, rest } = signing.content;
  const said = [
    ...(begun === null
      ? []
      : [words.sentence('exchanged.roundBegan', { text: beginningText(begun, words) })]),
    ...(rest === null ? [] : [restText(rest, words)]),
    ...(note === null || note.trim() === '' ? [] : [note]),
  ];
  return {
    resourceType: 'Observation',
    id: signing.id,
    meta: { profile: [profileUrl('vitalspanel')] },
    ...common(round, signing, signing.id),
    code: concept(LOINC.panel),
    effectiveDateTime: fhirTime(signing.measuredAt.at),
    hasMember: members.map(reference),
    ...(said.length === 0 ? {} : { note: said.map((text) => ({ text })) }),
  };
}

/** The mean of several readings of a round, with every reading it was made from. Source: interoperability handbook 9. */
function meanPressure(
  round: ChartRound,
  signing: Signing,
  gauges: ValueOf['gauges'],
  words: Words,
): Observation | null {
  const { pressure } = signing.content.value ?? { pressure: null };
  if (pressure === null || isAmendedSince(round) || round.isInError) return null;
  const { systolic, diastolic, used, rule } = pressure;
  const times = round.values.filter(({ original }) => used.includes(original.id));
  if (systolic === null || used.length < 2 || times.length !== used.length) return null;
  const at = times.map(({ original }) => original.measuredAt.at);
  at.sort((a, b) => Date.parse(a) - Date.parse(b));
  const judged = judgedOf({ round, words });
  const doubts = times.flatMap(({ original }) =>
    original.kind === 'run' ? gaugeTexts(original, gauges, words) : [],
  );
  const said = [
    words.sentence('exchanged.averageOf', { readings: used.length, rule }),
    ...new Set(doubts),
    ...(judged?.notes ?? []),
  ];
  return {
    resourceType: 'Observation',
    id: besideId(round.id),
    meta: { profile: [profileUrl('bp')] },
    ...common(round, signing, besideId(round.id)),
    code: concept(LOINC.pressure, LOINC.averagePressure),
    effectivePeriod: { start: fhirTime(at[0] as string), end: fhirTime(at.at(-1) as string) },
    component: [
      component([LOINC.systolic, LOINC.averageSystolic], roundTo(systolic, 1)),
      component([LOINC.diastolic, LOINC.averageDiastolic], diastolic === null ? null : roundTo(diastolic, 1)),
    ],
    derivedFrom: used.map(reference),
    ...(judged === null ? {} : { interpretation: [judged.interpretation] }),
    note: said.map((text) => ({ text })),
  };
}

function common(round: ChartRound, signing: Signing, id: string) {
  return {
    identifier: [{ system: SYSTEMS.uri, value: urn(id) }],
    status: statusOfRound(round, signing),
    category: [category('vital-signs')],
    subject: reference(signing.person as string),
    issued: fhirTime(signing.recordedAt),
    performer: [reference(signing.agent)],
  };
}

function statusOfRound(round: ChartRound, signing: Signing): Observation['status'] {
  if (round.isInError) return 'entered-in-error';
  if (round.isPreliminary) return 'preliminary';
  return signing.amends === null ? 'final' : 'amended';
}

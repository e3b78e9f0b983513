import type { ChartedPressure } from '@evenfall/record';
import { chartedPressure } from '@evenfall/record';
import type { CodeableConcept, ObservationComponent } from 'fhir/r4.js';
import { gaugeTexts } from '../text/valueText.js';
import type { Charted, Particulars } from './charted.js';
import { absent, category, concept, LOINC, named, SNOMED_POSTURES, SNOMED_SITES } from './concepts.js';
import { categoryOfReading } from './interpretation.js';
import { postureExtensions, postureNotes } from './posture.js';
import { quantity } from './quantity.js';
import { reference } from './references.js';
import { BODY_POSITION, profileUrl } from './systems.js';

/**
 * A pressure in the blood-pressure profile: always both components, the diastolic with a reason where there is none.
 * Cuff, arm, how it was on the feet and that the gauge failed since stand in a note, since R4 has no element for them. Source: interoperability handbook 3, 8 and 11.
 */
export function pressureParticulars(charted: Charted<'run'>): Particulars {
  const { entry, words, isSnomed } = charted;
  const pressure = chartedPressure(entry) as ChartedPressure;
  const { place, circumstances, gauge } = entry.content.evidence;
  const isFelt = entry.content.value.method === 'palpation';
  const category_ = categoryOfReading(charted);
  return {
    meta: { profile: [profileUrl('bp')] },
    category: [category('vital-signs')],
    code: concept(LOINC.pressure),
    component: [
      component(isFelt ? [LOINC.systolic, LOINC.systolicByPalpation] : [LOINC.systolic], pressure.systolic),
      component([LOINC.diastolic], pressure.diastolic),
    ],
    ...(category_ === null ? {} : { interpretation: [category_.interpretation] }),
    method: { text: methodText(charted, pressure) },
    bodySite: siteOf(charted),
    ...(gauge === null ? {} : { device: reference(gauge) }),
    extension: [
      {
        url: BODY_POSITION,
        valueCodeableConcept: named(
          words.sentence(`pressure.${place.posture}Posture`),
          isSnomed ? (SNOMED_POSTURES[place.posture] ?? null) : null,
        ),
      },
      ...postureExtensions(circumstances),
    ],
    notes: [...postureNotes(circumstances, words), ...notesOf(charted), ...(category_?.notes ?? [])],
  };
}

/** One component of a pressure, mmHg; null says that none was obtained. */
export function component(coding: Parameters<typeof concept>, value: number | null): ObservationComponent {
  return {
    code: concept(...coding),
    ...(value === null
      ? { dataAbsentReason: absent('not-performed') }
      : { valueQuantity: quantity(value, 'pressure') }),
  };
}

function siteOf({ entry, words, isSnomed }: Charted<'run'>): CodeableConcept {
  const { site, side } = entry.content.evidence.place;
  const text = words.title('limb', `${side} ${site}`);
  return named(text, isSnomed ? (SNOMED_SITES[`${site} ${side}`] ?? null) : null);
}

function methodText({ entry, words }: Charted<'run'>, { byHand }: ChartedPressure): string {
  const { method, muffled, diastolic, diastolicUsed } = entry.content.value;
  if (method === 'palpation') return words.sentence('exchanged.palpation');
  if (method === 'device') return words.sentence('exchanged.device');
  if (byHand || muffled === null || diastolic === diastolicUsed) return words.sentence('exchanged.phaseFive');
  return words.sentence('exchanged.toZero', { muffled });
}

function notesOf({ entry, words, gauges }: Charted<'run'>): string[] {
  const { place } = entry.content.evidence;
  const { override } = entry.content;
  const { cuff, armCm } = place;
  return [
    ...gaugeTexts(entry, gauges, words),
    ...(cuff === null
      ? []
      : [
          words.sentence('exchanged.cuffIs', {
            cuff: words.title('cuff', cuff.id),
            scheme: cuff.scheme === null ? '' : ` (${cuff.scheme})`,
          }),
        ]),
    ...(armCm === null ? [] : [words.sentence('exchanged.armIs', { cm: armCm })]),
    ...(override === null ? [] : [words.sentence('exchanged.setByHand', { reason: override.reason })]),
  ];
}

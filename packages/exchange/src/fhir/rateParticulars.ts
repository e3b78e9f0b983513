import { chartedPerMinute } from '@evenfall/record';
import type { CodeableConcept } from 'fhir/r4.js';
import type { Charted, Particulars } from './charted.js';
import { absent, category, concept, LOINC } from './concepts.js';
import { codeOfRate } from './interpretation.js';
import { quantity } from './quantity.js';
import { profileUrl } from './systems.js';

/** A pulse or breaths, counted or tapped; what gave no rate says why there is no value. */
export function rateParticulars(charted: Charted<'count' | 'taps'>): Particulars {
  const { entry, words } = charted;
  const of = entry.kind === 'count' ? entry.content.evidence.count.of : entry.content.evidence.taps.of;
  const perMinute = chartedPerMinute(entry);
  const { site } = entry.content.evidence.circumstances;
  const { override } = entry.content;
  const interpretation = codeOfRate(entry);
  return {
    meta: { profile: [profileUrl(of === 'pulse' ? 'heartrate' : 'resprate')] },
    category: [category('vital-signs')],
    code: concept(of === 'pulse' ? LOINC.pulse : LOINC.breaths),
    ...(perMinute === null
      ? { dataAbsentReason: absent('not-performed') }
      : { valueQuantity: quantity(perMinute, of) }),
    ...(interpretation === null ? {} : { interpretation: [interpretation] }),
    method: { text: methodText(charted) },
    ...(site === null ? {} : { bodySite: { text: words.title('site', site) } satisfies CodeableConcept }),
    notes: override === null ? [] : [words.sentence('exchanged.setByHand', { reason: override.reason })],
  };
}

function methodText({ entry, words }: Charted<'count' | 'taps'>): string {
  if (entry.kind === 'taps') {
    const beats = entry.content.evidence.taps.seconds.length;
    const key = entry.content.evidence.taps.of === 'pulse' ? 'tappedPulse' : 'tappedBreaths';
    return words.sentence(`exchanged.${key}`, { beats });
  }
  const { count, rateTyped } = entry.content.evidence;
  if (!('n' in count)) return words.sentence('exchanged.brokenOff');
  if (rateTyped === 'window-presumed') return words.sentence('exchanged.typedRate');
  if (rateTyped === 'window-said')
    return words.sentence('exchanged.typedRateOver', { seconds: count.windowSeconds });
  const key = count.of === 'pulse' ? 'countedPulse' : 'countedBreaths';
  return words.sentence(`exchanged.${key}`, { n: count.n, seconds: count.windowSeconds });
}

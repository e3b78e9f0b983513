import type { Charted, Particulars } from './charted.js';
import { category, concept, LOINC } from './concepts.js';
import { quantity } from './quantity.js';
import { OUR_SYSTEMS, profileUrl } from './systems.js';

/** A sign that is neither counted nor taken with a cuff. Pain and consciousness have no code in the open lists and carry ours. */
export function signParticulars({ entry, words }: Charted<'sign'>): Particulars {
  const { sign } = entry.content.evidence;
  const vital = { category: [category('vital-signs')], notes: [] };
  const own = {
    category: [category('exam')],
    code: { coding: [{ system: OUR_SYSTEMS.sign, code: sign.of }], text: words.sentence(`app.${sign.of}`) },
    notes: [],
  };
  switch (sign.of) {
    case 'temperature':
      return {
        ...vital,
        meta: { profile: [profileUrl('bodytemp')] },
        code: concept(LOINC.temperature),
        valueQuantity: quantity(sign.celsius, 'temperature'),
        bodySite: { text: words.title('temperatureSite', sign.site) },
      };
    case 'oxygen-saturation':
      return {
        ...vital,
        meta: { profile: [profileUrl('oxygensat')] },
        code: concept(LOINC.saturation, LOINC.saturationByOximetry),
        valueQuantity: quantity(sign.percent, 'saturation'),
        ...(sign.probe === null ? {} : { bodySite: { text: words.title('probe', sign.probe) } }),
        notes: [words.sentence(sign.onOxygen ? 'exchanged.onOxygen' : 'exchanged.onAir')],
      };
    case 'weight':
      return {
        ...vital,
        meta: { profile: [profileUrl('bodyweight')] },
        code: concept(LOINC.weight),
        valueQuantity: quantity(sign.kg, 'weight'),
        method: { text: words.title('howKnown', sign.how) },
      };
    case 'height':
      return {
        ...vital,
        meta: { profile: [profileUrl('bodyheight')] },
        code: concept(LOINC.height),
        valueQuantity: quantity(sign.cm, 'height'),
        method: { text: words.title('howKnown', sign.how) },
      };
    case 'pain':
      return {
        ...own,
        ...(sign.score === null
          ? { valueCodeableConcept: { text: words.title('painWord', sign.word ?? 'none') } }
          : { valueQuantity: quantity(sign.score, 'score') }),
        method: { text: sign.tool },
      };
    case 'consciousness':
      return { ...own, valueCodeableConcept: { text: words.title('consciousness', sign.level) } };
  }
}

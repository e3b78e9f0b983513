import {
  type GlasgowParts,
  glasgowTotal,
  lineOfScore,
  NO_SCORE_INPUTS,
  type OxygenSaturation,
  type Sign,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** A sign as a chart writes it, in a few words: temperature with its site, saturation with what is breathed. */
export function measureText(sign: Sign, words: Words): string {
  const { say } = words;
  switch (sign.of) {
    case 'temperature':
      return words.sentence('signs.temperatureIs', {
        celsius: sign.celsius,
        site: words.title('temperatureSite', sign.site),
      });
    case 'oxygen-saturation':
      return saturationText(sign, words);
    case 'pain':
      if (sign.score === null) return words.title('painWord', sign.word ?? 'none');
      return sign.tool === 'visual-analogue'
        ? words.sentence('signs.painOnLine', { mm: say.short(lineOfScore(sign.score), 1) })
        : words.sentence('signs.painIs', { score: say.short(sign.score, 1) });
    case 'consciousness': {
      const level = words.title('consciousness', sign.level);
      return sign.glasgow === null ? level : `${level}, ${glasgowText(sign.glasgow)}`;
    }
    case 'weight':
      return words.sentence('signs.weightIs', {
        kg: sign.kg,
        how: words.title('howKnown', sign.how),
      });
    case 'height':
      return words.sentence(sign.lying ? 'signs.lengthIs' : 'signs.heightIs', {
        cm: sign.cm,
        how: words.title('howKnown', sign.how),
      });
  }
}

function saturationText(sign: OxygenSaturation, words: Words): string {
  const { device, litresPerMinute, oxygenPercent } = sign;
  const percent = words.say.number(sign.percent);
  if (!sign.onOxygen) return words.sentence('signs.onAirIs', { percent });
  const how = [
    device,
    litresPerMinute === null ? null : words.sentence('signs.litres', { litres: litresPerMinute }),
    oxygenPercent === null ? null : words.sentence('signs.share', { percent: oxygenPercent }),
  ].filter((part) => part !== null);
  return how.length === 0
    ? words.sentence('signs.onOxygenIs', { percent })
    : words.sentence('signs.onOxygenByIs', { percent, how: how.join(', ') });
}

/** As the trade writes it: `E4 V5 M6 = 15`; no total where a part could not be tested. */
function glasgowText(parts: GlasgowParts): string {
  return glasgowTotal({ ...NO_SCORE_INPUTS, ...parts }).text;
}

import type { Sign } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** A sign as a chart writes it, in a few words: temperature with its site, saturation with what is breathed. */
export function measureText(sign: Sign, words: Words): string {
  const { say } = words;
  switch (sign.of) {
    case 'temperature':
      return words.sentence('signs.temperatureIs', {
        celsius: say.number(sign.celsius, 1),
        site: words.title('temperatureSite', sign.site),
      });
    case 'oxygen-saturation':
      return words.sentence(sign.onOxygen ? 'signs.onOxygenIs' : 'signs.onAirIs', {
        percent: say.number(sign.percent),
      });
    case 'pain':
      return sign.score === null
        ? words.title('painWord', sign.word ?? 'none')
        : words.sentence('signs.painIs', { score: say.short(sign.score, 1) });
    case 'consciousness':
      return words.title('consciousness', sign.level);
    case 'weight':
      return words.sentence('signs.weightIs', {
        kg: say.short(sign.kg, 2),
        how: words.title('howKnown', sign.how),
      });
    case 'height':
      return words.sentence('signs.heightIs', {
        cm: say.short(sign.cm, 1),
        how: words.title('howKnown', sign.how),
      });
  }
}

import type { RunPlace } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** Where the cuff is, in a few words. */
export function placeText(place: Pick<RunPlace, 'side' | 'site' | 'posture' | 'cuff'>, words: Words): string {
  const where = words.sentence('pressure.placeIs', {
    side: words.sentence(`pressure.${place.side}Side`),
    site: words.sentence(`pressure.${place.site}Site`),
    posture: words.sentence(`pressure.${place.posture}Posture`),
  });
  if (place.cuff === null) return where;
  const cuff = words.sentence('pressure.cuffIs', { text: words.title('cuff', place.cuff.id) });
  return `${where} · ${cuff}`;
}

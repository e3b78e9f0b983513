import { isRestWhole } from '@evenfall/clinical';
import type { RestKept } from '@evenfall/record';
import type { Words } from './words.js';

/** How long a person rested before the pressure, or why nobody waited for it, in one sentence. */
export function restText(rest: RestKept, words: Words): string {
  const { seconds, neededSeconds, skipped } = rest;
  const figures = { seconds, neededSeconds };
  if (isRestWhole(rest)) return words.sentence('rest.whole', figures);
  if (skipped?.reason === 'already-rested' && seconds === 0 && skipped.text === null)
    return words.sentence('rest.wasBefore');
  if (skipped === null) return words.sentence('rest.short', figures);
  const said = words.sentence(`rest.${skipped.reason}`);
  const text =
    skipped.text === null ? said : skipped.reason === 'other' ? skipped.text : `${said}; ${skipped.text}`;
  return words.sentence('rest.skipped', { ...figures, text });
}

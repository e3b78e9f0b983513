import { type ReportedContent, refusalsOf, reportedContent } from '@evenfall/record';
import { POSTURE_EXTENSIONS } from '../systems.js';
import { asObject, type Json, listIn } from './json.js';
import type { Refuse } from './readObservation.js';

type Posed = Pick<ReportedContent, keyof typeof POSTURE_EXTENSIONS>;

/** Where FHIR R4 has the value of each extension: `value` and the name of its type. */
const VALUE_KEYS = {
  unwellUpright: 'valueBoolean',
  uprightMinutes: 'valueDecimal',
  lyingMinutes: 'valueDecimal',
} as const;

/**
 * How it was on the feet, and how long somebody had lain, as an Evenfall writes it beside a pressure; null for what the
 * resource does not say. What cannot be is refused at its place.
 */
export function postureKnownIn(resource: Json, refuse: Refuse): Posed {
  const extensions = listIn(resource, 'extension').map(asObject);
  const read = <Key extends keyof Posed>(key: Key): Posed[Key] | null => {
    const at = extensions.findIndex(({ url }) => url === POSTURE_EXTENSIONS[key]);
    const extension = extensions[at];
    if (extension === undefined) return null;
    const got = extension[VALUE_KEYS[key]];
    const place = `/extension/${at}/${VALUE_KEYS[key]}`;
    const known = reportedContent.shape[key].safeParse(got);
    if (known.success) return known.data as Posed[Key];
    for (const { code, expected, choices, figures } of refusalsOf(known.error, got))
      refuse(place, code, expected, got, choices, figures);
    return null;
  };
  return {
    unwellUpright: read('unwellUpright'),
    uprightMinutes: read('uprightMinutes'),
    lyingMinutes: read('lyingMinutes'),
  };
}

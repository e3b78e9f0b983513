import type { CountOf } from '@evenfall/clinical';
import type { CountContent, TapsContent } from '@evenfall/record';
import type { Content } from '../parts/ValueFigures.js';
import type { DraftValue, RoundDraft } from './draft.js';
import { contentOf, type Signing } from './entries.js';

/** A draft value as it would be charted now, with its kind beside it. */
export function shownContent(
  draft: RoundDraft,
  sign: CountOf,
  value: DraftValue,
  under: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): Content {
  const content = contentOf(draft, sign, value, under);
  return value.kind === 'count'
    ? { kind: 'count', content: content as CountContent }
    : { kind: 'taps', content: content as TapsContent };
}

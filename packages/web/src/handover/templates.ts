import type { TemplateId } from '@evenfall/exchange';
import type { Kept } from '../store/kept.js';

/** What this device keeps with one template changed; null gives back the one that was brought. */
export function withTemplate(kept: Kept, which: TemplateId, text: string | null): Kept {
  const { [which]: _before, ...others } = kept.templates ?? {};
  return { ...kept, templates: text === null ? others : { ...others, [which]: text } };
}

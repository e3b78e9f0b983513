import type { RoundSign } from '@evenfall/clinical';
import { pressureWritten, type RunContent, type SignContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { measureText } from '../signs/measureText.js';
import { type Content, isVoidContent, rateText } from './ValueFigures.js';

/** A charted value of any sign with its kind beside it. */
export type Charted =
  | Content
  | { readonly kind: 'run'; readonly content: RunContent }
  | { readonly kind: 'sign'; readonly content: SignContent };

/** Whether a value is a rate: counted or tapped. */
export function isRate(given: Charted): given is Content {
  return given.kind === 'count' || given.kind === 'taps';
}

/** Which sign a value is of. */
export function signOfCharted(given: Charted): RoundSign {
  switch (given.kind) {
    case 'count':
      return given.content.evidence.count.of;
    case 'taps':
      return given.content.evidence.taps.of;
    case 'run':
      return 'pressure';
    case 'sign':
      return given.content.evidence.sign.of;
  }
}

/** The value in figures: a rate, a pressure as the trade writes it, or a sign with its unit. */
export function chartedText(given: Charted, words: Words): string {
  if (isRate(given)) return rateText(given, words);
  if (given.kind === 'sign') return measureText(given.content.evidence.sign, words);
  return pressureWritten(given.content);
}

/** Whether it was broken off, so that it gives no number. */
export function isVoidCharted(given: Charted): boolean {
  return isRate(given) && isVoidContent(given);
}

import { type Refusal, refusal } from '@evenfall/clinical';
import type { Given } from '../../options/option.js';

/** A mean that was typed, and of how many: `148/92x2`; of the office so many visits. */
export type TypedMean = { readonly systolic: number; readonly diastolic: number; readonly count: number };

const MEAN = /^(\d{1,3}(?:\.\d+)?)\/(\d{1,3}(?:\.\d+)?)(?:x(\d{1,5}))?$/;

/** A typed mean; null where it was not typed or is refused. */
export function meanOf(given: Given, name: string, refusals: Refusal[]): TypedMean | null {
  const text = given.text(name);
  if (text === null) return null;
  const found = MEAN.exec(text);
  if (found === null) {
    refusals.push(refusal(`/${name}`, 'not-a-number', 'mean-and-count', text));
    return null;
  }
  const mean = { systolic: Number(found[1]), diastolic: Number(found[2]), count: Number(found[3] ?? 1) };
  if (mean.diastolic >= mean.systolic) {
    const figures = { systolic: mean.systolic };
    refusals.push(refusal(`/${name}`, 'not-below-systolic', 'diastolic-below-this', text, { figures }));
    return null;
  }
  if (mean.count === 0) {
    refusals.push(refusal(`/${name}`, 'out-of-range', 'mean-and-count', text));
    return null;
  }
  return mean;
}

import { pointer } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import type { Moment, Peak } from './run.js';

/** A moment with its place in the input, from 0. */
export type PlacedMoment = Moment & { readonly index: number };

/**
 * What is wrong with the order of moments: times rise from the peak on; pressures fall from the peak on, but that
 * sounds which had gone may come back (a gap, or a cuff pumped up again). The first sound, the muffling and the
 * return of the pulse come once, but for one return of the sounds after a last sound.
 */
export function sequenceRefusals(moments: readonly PlacedMoment[], peak: Peak | null): Refusal[] {
  return [...repeats(moments), ...unordered(moments), ...pressures(moments, peak), ...times(moments, peak)];
}

function repeats(moments: readonly PlacedMoment[]): Refusal[] {
  let firsts = 0;
  let isHeard = false;
  const refusals: Refusal[] = [];
  const refuse = ({ index, what }: PlacedMoment) => {
    refusals.push(refusal(at(index, 'what'), 'repeated', 'once', what));
  };
  for (const [place, moment] of moments.entries()) {
    const isAgain = moments.slice(0, place).some(({ what }) => what === moment.what);
    if (moment.what === 'first sound') {
      if (isAgain && (isHeard || firsts > 1)) refuse(moment);
      firsts++;
      isHeard = true;
    } else if (moment.what === 'last sound') isHeard = false;
    else if (isAgain) refuse(moment);
  }
  return refusals;
}

/** The first sound opens, the last sound closes, and muffling lies between, after a gap. */
function unordered(moments: readonly PlacedMoment[]): Refusal[] {
  const refusals: Refusal[] = [];
  let isOpen = false;
  const hasFirst = moments.some(({ what }) => what === 'first sound');
  const lastAt = moments.findLastIndex(({ what }) => what === 'last sound');
  const againAt = moments.findLastIndex(({ what }) => what === 'first sound');
  for (const [place, { what, index }] of moments.entries()) {
    if (what === 'first sound') isOpen = true;
    const isEarly =
      hasFirst && ((what === 'last sound' && !isOpen) || (what === 'muffled' && place < againAt));
    const isLate = what !== 'last sound' && what !== 'pulse back' && lastAt >= 0 && place > lastAt;
    if (!isEarly && !isLate) continue;
    const expected = isEarly ? 'after-first-sound' : 'before-last-sound';
    refusals.push(refusal(at(index, 'what'), 'out-of-order', expected, what));
  }
  return refusals;
}

function pressures(moments: readonly PlacedMoment[], peak: Peak | null): Refusal[] {
  const refusals: Refusal[] = [];
  const first = moments.find(({ what }) => what === 'first sound');
  for (const [place, { what, mmHg, index }] of moments.entries()) {
    const field = at(index, 'mmHg');
    const before = moments[place - 1];
    const isNotBelow = first !== undefined && what !== 'first sound' && mmHg >= first.mmHg;
    // Sounds that vanish on the very beat on which they began open a gap there (186/94, gap 186-152).
    const opensGap =
      what === 'last sound' && mmHg === first?.mmHg && moments[place + 1]?.what === 'first sound';
    if (peak !== null && mmHg > peak.mmHg) {
      refusals.push(abovePeak(field, mmHg, peak));
    } else if (isNotBelow && !opensGap) {
      const figures = { systolic: first.mmHg };
      refusals.push(refusal(field, 'not-below-systolic', 'below-systolic', mmHg, { figures }));
    } else if (before !== undefined && mmHg > before.mmHg && what !== 'first sound') {
      const figures = { beforeMmHg: before.mmHg };
      refusals.push(refusal(field, 'out-of-order', 'not-above-moment-before', mmHg, { figures }));
    }
  }
  return refusals;
}

/** A pressure above the highest of its run. */
export function abovePeak(field: string, mmHg: number, peak: Peak): Refusal {
  return refusal(field, 'out-of-order', 'not-above-peak', mmHg, { figures: { peakMmHg: peak.mmHg } });
}

function times(moments: readonly PlacedMoment[], peak: Peak | null): Refusal[] {
  const refusals: Refusal[] = [];
  let beforeSeconds = peak?.atSeconds ?? null;
  for (const { atSeconds, index } of moments) {
    if (atSeconds === null) continue;
    if (beforeSeconds !== null && atSeconds <= beforeSeconds) {
      const figures = { beforeSeconds };
      refusals.push(
        refusal(at(index, 'atSeconds'), 'out-of-order', 'later-than-before', atSeconds, { figures }),
      );
    }
    beforeSeconds = Math.max(beforeSeconds ?? atSeconds, atSeconds);
  }
  return refusals;
}

function at(index: number, key: string): string {
  return pointer(pointer('/moments', index), key);
}

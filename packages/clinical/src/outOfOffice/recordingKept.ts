import type { Flag } from '../contract/flag.js';
import type { AmbulatoryCircumstances } from './ambulatoryCircumstances.js';
import type { AmbulatoryRules } from './ambulatoryRules.js';
import { type ArtefactCode, artefactOf, farFromMean } from './artefacts.js';
import { HOUR_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { periodOf } from './periods.js';
import { inTimeOrder, isTwin, type SeriesReading, valuesOf } from './seriesReading.js';

export type EditCode = ArtefactCode | 'failed' | 'duplicate' | 'after-24-hours' | 'rejected';
export type Edited = { readonly index: number } & Flag<EditCode>;

/** What a rule, an error of the recorder or a hand takes out; each once, with its first reason. */
export function recordingKept(
  readings: readonly SeriesReading[],
  known: AmbulatoryCircumstances,
  rules: AmbulatoryRules,
): { kept: SeriesReading[]; edited: Edited[] } {
  const edited: Edited[] = [];
  const edit = (index: number, code: EditCode, figures: Flag['figures'] = {}): void => {
    edited.push({ index, code, figures });
  };
  const ordered = inTimeOrder(readings);
  const endMs = (ordered[0]?.atMs ?? 0) + F.usedHours.value * HOUR_MS;
  let kept: SeriesReading[] = [];
  for (let k = 0; k < ordered.length; k++) {
    const reading = ordered[k] as SeriesReading;
    const { index, systolic, diastolic } = reading;
    const twin = twinOf(kept, reading);
    const artefact = artefactOf(reading, rules.editing);
    if (known.rejected.has(index)) edit(index, 'rejected');
    else if (systolic === null && diastolic === null) edit(index, 'failed');
    else if (!known.isAllUsed && reading.atMs >= endMs) edit(index, 'after-24-hours');
    else if (twin !== undefined) edit(index, 'duplicate', { ofIndex: twin.index });
    else if (artefact !== null && !known.restored.has(index)) edit(index, artefact);
    else kept.push(reading);
  }
  if (rules.editingSds !== null) {
    const far = farOf(kept, known, rules.editingSds.limit);
    for (const index of far) edit(index, 'far-from-mean', { sds: rules.editingSds.limit });
    kept = kept.filter(({ index }) => !far.has(index));
  }
  return { kept, edited: edited.sort((a, b) => a.index - b.index) };
}

/** The same reading among those of its instant, which stand last. */
function twinOf(kept: readonly SeriesReading[], reading: SeriesReading): SeriesReading | undefined {
  for (let k = kept.length - 1; k >= 0 && kept[k]?.atMs === reading.atMs; k--) {
    const one = kept[k] as SeriesReading;
    if (isTwin(one, reading)) return one;
  }
  return undefined;
}

/** Asleep and awake each for itself, once. */
function farOf(kept: readonly SeriesReading[], known: AmbulatoryCircumstances, sds: number): Set<number> {
  const far = new Set<number>();
  for (const period of ['day', 'night', 'neither'] as const) {
    const inside = kept.filter((one) => periodOf(one, known.dayNight) === period);
    for (const measure of ['systolic', 'diastolic'] as const) {
      const having = inside.filter((one) => one[measure] !== null);
      for (const at of farFromMean(valuesOf(having, measure), sds)) {
        const { index } = having[at] as SeriesReading;
        if (!known.restored.has(index)) far.add(index);
      }
    }
  }
  return far;
}

/** A double and what lies beyond the first day were never on the schedule. */
export function isNotScheduled({ code }: Edited): boolean {
  return code === 'duplicate' || code === 'after-24-hours';
}

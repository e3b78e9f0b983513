import { type ArmFactKind, NEVER_FACTS } from './facts.js';
import { CUFF_FIGURES as F } from './figures.js';
import type { CuffSchemeId } from './schemes.js';

/** The local rules of choosing a cuff and a place for it: the values of a protocol's `cuff` section. */
export type CuffRules = {
  readonly scheme: CuffSchemeId;
  /** What bars an arm altogether; always holds what no place may free. */
  readonly neverFor: readonly ArmFactKind[];
  /** What makes the other arm better; this one needs a name and a reason. */
  readonly preferOtherFor: readonly ArmFactKind[];
  readonly childUnderMonths: number;
  readonly latePregnancyFromWeeks: number;
};

export const DEFAULT_CUFF_RULES: CuffRules = {
  scheme: 'aha-2005',
  neverFor: NEVER_FACTS,
  preferOtherFor: ['axillary-surgery', 'lymphoedema', 'weakness', 'injury', 'lower-arm'],
  childUnderMonths: F.childUnderMonths.value,
  latePregnancyFromWeeks: F.latePregnancyFromWeeks.value,
};

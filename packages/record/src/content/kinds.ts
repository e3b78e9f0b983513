import type { z } from 'zod';
import { actNowClosedContent, firstActNowClosedContent, upgradeActNowClosed } from './actNowClosed.js';
import {
  enteredInErrorContent,
  firstPersonContent,
  identityCorrectedContent,
  identityErasedContent,
  personContent,
  protocolChosenContent,
} from './administrative.js';
import { classSessionContent, classSessionEndedContent, keptByAgreementContent } from './classSession.js';
import { countContent, firstCountContent, upgradeCount } from './count.js';
import { countersignedContent } from './countersigned.js';
import { diaryEndedContent, diaryHandedContent } from './diary.js';
import { equipmentContent, equipmentEndedContent, gaugeLoggedContent } from './equipment.js';
import {
  exerciseContent,
  firstExerciseContent,
  secondExerciseContent,
  thirdExerciseContent,
  upgradeExercise,
} from './exercise.js';
import { factContent, factEndedContent } from './fact.js';
import { firstReportedContent, reportedContent, upgradeReported } from './reported.js';
import {
  firstRoundContent,
  roundContent,
  secondRoundContent,
  thirdRoundContent,
  upgradeRound,
} from './round.js';
import {
  fifthRunContent,
  firstRunContent,
  fourthRunContent,
  runContent,
  secondRunContent,
  thirdRunContent,
  upgradeRun,
} from './run.js';
import { scenarioContent } from './scenario.js';
import {
  firstSeriesContent,
  secondSeriesContent,
  seriesContent,
  seriesDecidedContent,
  upgradeSeries,
} from './series.js';
import { firstSignContent, signContent, upgradeSign } from './sign.js';
import { tapsContent } from './taps.js';

/**
 * Every kind of entry and, for each schema number it ever had, how its content reads. A new shape gets the
 * next number and keeps the old ones here for ever; `upgrade` turns an older content into the newest shape
 * when it is read (what is stored never changes).
 */
export type Kind = {
  readonly schemas: Readonly<Record<number, z.ZodType>>;
  readonly newest: number;
  readonly upgrade: (content: unknown, from: number) => unknown;
};

const first = (schema: z.ZodType): Kind => ({
  schemas: { 1: schema },
  newest: 1,
  upgrade: (content) => content,
});

export const KINDS = {
  person: {
    schemas: { 1: firstPersonContent, 2: personContent },
    newest: 2,
    upgrade: (content) => content,
  },
  'identity-corrected': first(identityCorrectedContent),
  'identity-erased': first(identityErasedContent),
  count: { schemas: { 1: firstCountContent, 2: countContent }, newest: 2, upgrade: upgradeCount },
  taps: first(tapsContent),
  run: {
    schemas: {
      1: firstRunContent,
      2: secondRunContent,
      3: thirdRunContent,
      4: fourthRunContent,
      5: fifthRunContent,
      6: runContent,
    },
    newest: 6,
    upgrade: upgradeRun,
  },
  sign: { schemas: { 1: firstSignContent, 2: signContent }, newest: 2, upgrade: upgradeSign },
  reported: {
    schemas: { 1: firstReportedContent, 2: reportedContent },
    newest: 2,
    upgrade: upgradeReported,
  },
  round: {
    schemas: { 1: firstRoundContent, 2: secondRoundContent, 3: thirdRoundContent, 4: roundContent },
    newest: 4,
    upgrade: upgradeRound,
  },
  'diary-handed': first(diaryHandedContent),
  'diary-ended': first(diaryEndedContent),
  series: {
    schemas: { 1: firstSeriesContent, 2: secondSeriesContent, 3: seriesContent },
    newest: 3,
    upgrade: upgradeSeries,
  },
  'series-decided': first(seriesDecidedContent),
  fact: first(factContent),
  'fact-ended': first(factEndedContent),
  'act-now-closed': {
    schemas: { 1: firstActNowClosedContent, 2: actNowClosedContent },
    newest: 2,
    upgrade: upgradeActNowClosed,
  },
  countersigned: first(countersignedContent),
  'entered-in-error': first(enteredInErrorContent),
  'protocol-chosen': first(protocolChosenContent),
  equipment: first(equipmentContent),
  'equipment-ended': first(equipmentEndedContent),
  'gauge-logged': first(gaugeLoggedContent),
  exercise: {
    schemas: {
      1: firstExerciseContent,
      2: secondExerciseContent,
      3: thirdExerciseContent,
      4: exerciseContent,
    },
    newest: 4,
    upgrade: upgradeExercise,
  },
  scenario: first(scenarioContent),
  'class-session': first(classSessionContent),
  'class-session-ended': first(classSessionEndedContent),
  'kept-by-agreement': first(keptByAgreementContent),
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof KINDS;
export const KIND_NAMES = Object.keys(KINDS) as [KindName, ...KindName[]];

import { POSTURES, SIDES } from '@evenfall/clinical';
import { z } from 'zod';
import { flag } from './shared.js';

const number = z.number().nullable();
const code = z.string().min(1).max(60);
const flags = z.array(flag);
const side = z.enum(SIDES).nullable();
const figures = z.record(z.string(), z.number());

const pressure = z
  .object({
    systolic: number,
    diastolic: number,
    rule: code,
    isGeneral: z.boolean(),
    side,
    posture: z.enum(POSTURES).nullable(),
    used: z.array(z.string()),
    leftOut: z.array(z.object({ id: z.string(), reason: code }).strict()),
    needs: flags,
    flags,
    why: flags,
  })
  .strict();

const arms = z
  .object({
    systolicMmHg: z.number(),
    diastolicMmHg: number,
    meanSystolicMmHg: z.number(),
    meanDiastolicMmHg: number,
    pairs: z.number().int(),
    higherArm: side,
    isRepeatNeeded: z.boolean(),
    why: flags,
  })
  .strict();

const category = z
  .object({
    guideline: code,
    category: code.nullable(),
    systolicCategory: code.nullable(),
    diastolicCategory: code.nullable(),
    isolated: z.enum(['systolic', 'diastolic']).nullable(),
    atLeast: code.nullable(),
    level: code.nullable(),
    highestOf: z.number().int().nullable(),
    shown: z.object({ systolic: z.string().nullable(), diastolic: z.string().nullable() }).strict(),
    screening: code.nullable(),
    centiles: z.object({ systolic: number, diastolic: number }).strict().nullable(),
    flags,
    why: flags,
  })
  .strict();

const earlyWarning = z
  .object({
    total: number,
    atLeast: z.number(),
    parts: z.record(z.string(), number),
    band: code.nullable(),
    missing: z.array(code),
    alerts: flags,
    response: flag.nullable(),
    checks: flag.nullable(),
    flags,
    why: flags,
  })
  .strict();

const yes = z.boolean().nullable();
const standing = z
  .object({
    positive: yes,
    bySystolic: yes,
    byDiastolic: yes,
    delayed: yes,
    limits: z.object({ systolicFall: z.number(), diastolicFall: z.number() }).strict(),
    falls: z.array(z.record(z.string(), z.union([z.number(), z.boolean(), z.null()]))),
    heartRateRatio: number,
    heartRatePattern: code.nullable(),
    pulseRise: number,
    riseToReport: yes,
    missing: z.array(code),
    flags,
    why: flags,
  })
  .strict();

export const alert = z
  .object({
    condition: code,
    figures,
    source: z.string().max(2000),
    sure: code,
    confirmLocally: z.boolean(),
  })
  .strict();

/** What the protocol made of a round: the `RoundResult` of `clinical/round`. */
export const roundValue = z
  .object({
    pressure: pressure.nullable(),
    arms: arms.nullable(),
    category: category.nullable(),
    meanPressureMmHg: number,
    pulsePressureMmHg: number,
    earlyWarning: earlyWarning.nullable(),
    scores: z.array(z.object({ of: code, value: number, unit: code, band: code.nullable(), flags }).strict()),
    standing: standing.nullable(),
    actNow: z.array(alert),
    ask: z.object({ features: z.array(code), pregnancy: z.boolean(), why: flags }).strict(),
    recheckClass: code.nullable(),
    rechecks: z.array(
      z
        .object({ code, fromSeconds: z.number().min(0), withinSeconds: z.number().min(0).nullable() })
        .strict(),
    ),
  })
  .strict();
export type RoundValueKept = z.infer<typeof roundValue>;

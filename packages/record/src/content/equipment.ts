import {
  CUFF_SCHEME_IDS,
  cuffScheme,
  EQUIPMENT_FIGURES,
  GAUGE_EVENTS,
  GAUGE_TYPES,
} from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { computedBy } from './computedBy.js';
import { flag, note } from './shared.js';

const name = z.string().trim().min(1).max(80);
const room = z.string().trim().min(1).max(80).nullable();
const top = EQUIPMENT_FIGURES.topMmHg.value;
const mmHg = z.number().min(0).max(top);
const error = z.number().min(-top).max(top);
const number = z.number().nullable();

const gauge = z
  .object({
    what: z.literal('gauge'),
    /** As it stands on its label. */
    name,
    type: z.enum(GAUGE_TYPES),
    room,
    serial: z.string().trim().min(1).max(80).nullable(),
    note,
  })
  .strict();

/** The widest and the longest bladder that is read, cm: far above any in a scheme of cuffs. Source: decision of this project. */
const LARGEST_BLADDER_CM = 100;
const cm = z.number().positive().max(LARGEST_BLADDER_CM);

const cuff = z
  .object({
    what: z.literal('cuff'),
    room,
    scheme: z.enum(CUFF_SCHEME_IDS),
    cuff: z.string().min(1).max(40),
    /** The bladder as measured; null for as the scheme has it. */
    bladderCm: z.object({ width: cm, length: cm }).strict().nullable(),
    /** How many of them. */
    pieces: z.number().int().min(1).max(999),
    note,
  })
  .strict()
  .refine((given) => cuffScheme(given.scheme).cuffs.some((one) => one.id === given.cuff), {
    path: ['cuff'],
    message: 'cuff-of-scheme',
  });

/** A gauge, or cuffs of one size in one room: what the place measures with. The entry's id is the thing's own. */
export const equipmentContent = z.union([gauge, cuff]);
export type EquipmentContent = z.infer<typeof equipmentContent>;
export type GaugeNamed = z.infer<typeof gauge>;
export type CuffNamed = z.infer<typeof cuff>;

/** It is here no more: what was read with it, and its log, stay. */
export const equipmentEndedContent = z
  .object({ equipment: id, reason: z.string().trim().min(1).max(500).nullable() })
  .strict();
export type EquipmentEndedContent = z.infer<typeof equipmentEndedContent>;

/** Room for a comparison up and down the scale at every 10 mmHg. */
const MOST_POINTS = 80;

const log = z.discriminatedUnion('of', [
  z.object({ of: z.literal('zero'), restMmHg: error }).strict(),
  z
    .object({
      of: z.literal('comparison'),
      /** What it was held against. */
      reference: z.string().trim().min(1).max(200),
      points: z
        .array(z.object({ referenceMmHg: mmHg, gaugeMmHg: error }).strict())
        .min(1)
        .max(MOST_POINTS),
    })
    .strict(),
  z.object({ of: z.literal('leak'), fromMmHg: mmHg, toMmHg: mmHg, seconds: z.number().positive() }).strict(),
  z.object({ of: z.enum(GAUGE_EVENTS) }).strict(),
]);

/**
 * What was done with a gauge: a check with what it comes to, or that it was dropped or repaired. `evidence` is what
 * was read; `value` what `clinical/equipment` made of it under the rule that `computedBy` names.
 */
export const gaugeLoggedContent = z
  .object({
    gauge: id,
    evidence: z.object({ log }).strict(),
    value: z
      .object({
        verdict: z.enum(['good', 'failed', 'incomplete', 'none']),
        errorMmHg: number,
        errorAtMmHg: number,
        meanErrorMmHg: number,
        leakMmHgPerMinute: number,
        flags: z.array(flag),
        why: z.array(flag),
      })
      .strict(),
    computedBy,
    note,
  })
  .strict();
export type GaugeLoggedContent = z.infer<typeof gaugeLoggedContent>;

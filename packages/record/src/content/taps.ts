import { z } from 'zod';
import { computedBy } from './computedBy.js';
import { circumstances, countOf, flag, note, override } from './shared.js';

const statistic = z.number().nullable();

/** Beats or breaths tapped one by one: a time for each, and what `clinical/taps` made of them. */
export const tapsContent = z
  .object({
    evidence: z
      .object({
        taps: z
          .object({
            of: countOf,
            source: z.enum(['touch', 'key', 'file']),
            seconds: z.array(z.number()).min(1).max(2000),
          })
          .strict(),
        repair: z.boolean(),
        circumstances,
      })
      .strict(),
    value: z
      .object({
        perMinute: statistic,
        lowPerMinute: statistic,
        highPerMinute: statistic,
        beats: z.number().int(),
        repairs: z.array(
          z
            .object({
              index: z.number().int().min(1),
              what: z.enum(['missed', 'doubled']),
              added: z.number().int(),
            })
            .strict(),
        ),
        meanIntervalMs: statistic,
        sdIntervalMs: statistic,
        cv: statistic,
        rmssdMs: statistic,
        nrmssd: statistic,
        turningPointRatio: statistic,
        shannonEntropy: statistic,
        tapJitterMs: statistic,
        rhythm: z.enum([
          'regular',
          'regular-with-breathing',
          'occasionally-irregular',
          'regularly-irregular',
          'irregularly-irregular',
          'undecided',
        ]),
        flags: z.array(flag),
        why: z.array(flag),
        nextWindowSeconds: statistic,
        nextWhy: z.array(flag),
      })
      .strict(),
    override,
    computedBy,
    note,
  })
  .strict();
export type TapsContent = z.infer<typeof tapsContent>;

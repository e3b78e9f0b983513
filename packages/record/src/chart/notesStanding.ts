import { type RoundNotes, roundNotes } from '@evenfall/clinical';
import { NOTHING_CHOSEN } from '../content/inForce.js';
import { chartedPressure } from './chartedPressure.js';
import type { ChartRound } from './projectChart.js';
import { type RulesOf, signingOf } from './valueStanding.js';

/**
 * What is said beside a round, from its readings as they stand: made anew each time, of evidence that is kept, and part
 * of no kept value. Of one that amendments dispute, every claim is looked at. The ids are those of the entries that stand.
 *
 * @param rulesOf the rules of the version that the signing names; general ones where they are not at hand
 */
export function notesStanding(round: ChartRound, rulesOf: RulesOf): RoundNotes {
  const { roundRules } = rulesOf(signingOf(round)?.content.protocolVersion ?? null) ?? NOTHING_CHOSEN;
  const readings = round.values.flatMap(({ current }) =>
    current.flatMap((entry) => {
      const pressure = chartedPressure(entry);
      if (pressure === null || entry.kind !== 'run') return [];
      const { run, place, circumstances } = entry.content.evidence;
      const { uprightMinutes, unwellUpright, lyingMinutes, previous } = circumstances;
      return [
        {
          ...place,
          id: entry.id,
          method: run.method,
          systolic: pressure.systolic,
          diastolic: pressure.diastolicUsed,
          atSeconds: null,
          pulsePerMinute: run.pulsePerMinute,
          uprightMinutes,
          isUnwellUpright: unwellUpright,
          lyingMinutes,
          measuredSeconds: Date.parse(entry.measuredAt.at) / 1000,
          isRestKnown: previous !== null,
        },
      ];
    }),
  );
  return roundNotes(readings, roundRules.readings.gapSeconds);
}

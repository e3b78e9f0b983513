import { type ActNowAlert, actNow } from '../round/actNow.js';
import { SEVERE_AWAY, severeLimits } from '../round/actNowRules.js';
import { knownChild, limitsOfChild, p95ToActBy } from '../round/childLimits.js';
import { type EmergencyFeature, NOTHING_KNOWN } from '../round/knownSigns.js';
import type { RoundFacts } from '../round/roundFacts.js';
import type { RoundRules } from '../round/roundRules.js';
import { isPressureSevere, type KnownPressure } from '../round/severe.js';
import { upright } from './actFirstOf.js';

/** A condition of a series that somebody must act on at once. */
export type SeriesAlert = Omit<ActNowAlert, 'condition'> & {
  readonly condition: ActNowAlert['condition'] | typeof SEVERE_AWAY;
};

/** What a series is looked through for: a pressure, with the pulse beside it; null is not known. */
export type SeriesPressure = KnownPressure & { readonly pulse: number | null };

/** What already says that somebody's pressure is severe. */
const SAYS_SEVERE = /^(severe-|child-crisis|child-high)/;

/**
 * What somebody must act on at once in readings that were taken away from the clinic: the conditions of a round, each
 * once, with the figures of the first reading that meets it. A severe pressure of which nothing else says so alerts by
 * itself, unless the place switched that off: nobody was there to ask the person. Readings that no mean uses, and rows that were refused for something
 * else, count like any other; two numbers that stand the wrong way round are looked at the right way round. Whether a category can be given has no part in it.
 *
 * @param given in any order; those of one person on any days
 * @param features what the person says now; null if nobody asked
 * Errors: none. Source: as of a round; that a severe one alerts by itself is a decision of this project.
 */
export function seriesAlerts(
  given: readonly SeriesPressure[],
  features: readonly EmergencyFeature[] | null,
  facts: RoundFacts,
  { actNow: rules, actNowOrigins }: Pick<RoundRules, 'actNow' | 'actNowOrigins'>,
): SeriesAlert[] {
  const readings = given.map(upright);
  const child = knownChild({ heightCm: facts.heightCm, facts });
  const shared = {
    ...NOTHING_KNOWN,
    ageMonths: facts.ageMonths,
    pregnant: facts.isPregnant,
    weeksAfterBirth: facts.weeksAfterBirth,
    features,
    p95: p95ToActBy(facts, child === null ? null : limitsOfChild(child)),
  };
  const found: SeriesAlert[] = readings.flatMap(({ systolic, diastolic, pulse }) =>
    actNow({ ...shared, systolic, diastolic, pulsePerMinute: pulse }, rules, actNowOrigins),
  );
  const severe = readings.find((reading) => isPressureSevere(reading, severeLimits(rules)));
  const isOn = !rules.switchedOff.includes(SEVERE_AWAY);
  if (isOn && severe !== undefined && !found.some(({ condition }) => SAYS_SEVERE.test(condition))) {
    const { severeSystolic, severeDiastolic } = actNowOrigins;
    found.unshift({
      condition: SEVERE_AWAY,
      figures: figuresOf(severe),
      source: [...new Set([severeSystolic.source, severeDiastolic.source])].join('; '),
      sure: 'decision',
      confirmLocally: true,
    });
  }
  return found.filter(({ condition }, at) => found.findIndex((one) => one.condition === condition) === at);
}

function figuresOf({ systolic, diastolic }: KnownPressure): Record<string, number> {
  return {
    ...(systolic === null ? {} : { systolic }),
    ...(diastolic === null ? {} : { diastolic }),
  };
}

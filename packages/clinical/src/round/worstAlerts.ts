import type { ActNowAlert } from './actNow.js';
import type { ActNowId } from './actNowRules.js';

/** Of these the lowest systolic is the worst; of every other condition of a pressure the highest. */
const LOW_CONDITIONS: readonly ActNowId[] = ['very-low-pressure', 'child-hypotension'];

/** Of these the lowest is named: those of a low pressure, and how somebody felt on their feet. */
const LOWEST_NAMED: readonly string[] = [...LOW_CONDITIONS, 'unwell-upright'];

/** Whether a condition is one of a pressure that is too low. */
export function isLowCondition(condition: string): boolean {
  return (LOW_CONDITIONS as readonly string[]).includes(condition);
}

type Alert = Pick<ActNowAlert, 'figures'> & { readonly condition: string };

/**
 * Each condition once, in the order given, with the figures of the worst pressure that meets it; of those without a
 * pressure, and of equals, the first.
 *
 * @param alerts of several readings, or of several claims of one; mmHg
 * Source: none; that the worst is named and not the first is our decision.
 */
export function worstAlerts<One extends Alert>(alerts: readonly One[]): One[] {
  const worst = new Map<string, One>();
  for (const alert of alerts) {
    const before = worst.get(alert.condition);
    if (before === undefined || isWorse(alert, before)) worst.set(alert.condition, alert);
  }
  return [...worst.values()];
}

function isWorse({ condition, figures }: Alert, before: Alert): boolean {
  const sign = LOWEST_NAMED.includes(condition) ? -1 : 1;
  for (const part of ['systolic', 'diastolic'] as const) {
    const [now, then] = [figures[part], before.figures[part]];
    if (now === undefined || then === undefined) {
      if (now !== then) return then === undefined;
    } else if (now !== then) return sign * now > sign * then;
  }
  return false;
}

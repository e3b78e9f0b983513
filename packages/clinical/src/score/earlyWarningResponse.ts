import type { Flag } from '../contract/flag.js';
import { isPast } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';

export type EarlyWarningBand = 'low' | 'low-medium' | 'medium' | 'high';

export type EarlyWarningResponseCode =
  | 'response-routine'
  | 'response-nurse-decides'
  | 'response-ward-review'
  | 'response-urgent-assessment'
  | 'response-emergency-team'
  | 'check-every-hours'
  | 'check-between-hours'
  | 'check-continuously';

/** The band of a total: the higher of what the sum and a part of 3 points say. */
export function earlyWarningBand(total: number, hasThreeInOnePart: boolean): EarlyWarningBand {
  if (isPast(total, 'ewHighTotal')) return 'high';
  if (isPast(total, 'ewMediumTotal')) return 'medium';
  return hasThreeInOnePart ? 'low-medium' : 'low';
}

type Response = {
  readonly response: Flag<EarlyWarningResponseCode>;
  readonly checks: Flag<EarlyWarningResponseCode>;
};

/**
 * Who is to come, and how often the person is to be checked at the least. Local times and numbers win.
 * Source: Royal College of Physicians, London 2017; bedside handbook 5.2.
 */
export function earlyWarningResponse(band: EarlyWarningBand, total: number): Response {
  const hourly = { code: 'check-every-hours', figures: { hours: F.ewHourly.value } } as const;
  switch (band) {
    case 'high':
      return { response: answer('response-emergency-team'), checks: answer('check-continuously') };
    case 'medium':
      return { response: answer('response-urgent-assessment'), checks: hourly };
    case 'low-medium':
      return { response: answer('response-ward-review'), checks: hourly };
    case 'low': {
      if (total === 0) {
        const checks = { code: 'check-every-hours', figures: { hours: F.ewZeroHours.value } } as const;
        return { response: answer('response-routine'), checks };
      }
      const figures = { fromHours: F.ewLowFromHours.value, toHours: F.ewLowToHours.value };
      return { response: answer('response-nurse-decides'), checks: { code: 'check-between-hours', figures } };
    }
  }
}

function answer(code: EarlyWarningResponseCode): Flag<EarlyWarningResponseCode> {
  return { code, figures: {} };
}

import type { RoundSign, RoundStep } from '@evenfall/clinical';

/** Where a step of a round is taken. */
const PLACE_OF: Readonly<Record<RoundStep, string>> = {
  prepare: '/prepare',
  pulse: '/pulse',
  breaths: '/breaths',
  cuff: '/pressure',
  palpate: '/pressure',
  listen: '/pressure',
  repeat: '/pressure',
  'other-arm': '/pressure',
  lying: '/pressure',
  standing: '/pressure',
  temperature: '/signs',
  'oxygen-saturation': '/signs',
  pain: '/signs',
  consciousness: '/signs',
  weight: '/signs',
  height: '/signs',
  review: '',
};

/** The address of the page on which a step is taken. */
export function nextHref(person: string, step: RoundStep): string {
  return `/people/${person}/round${PLACE_OF[step]}`;
}

/** The step with which a sign begins; the review where none is open. */
export function stepOf(sign: RoundSign | undefined): RoundStep {
  if (sign === undefined) return 'review';
  return sign === 'pressure' ? 'cuff' : sign;
}

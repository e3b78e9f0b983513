import type { RoundStep } from '@evenfall/clinical';

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

import type { RunContent } from '@evenfall/record';

/** The key of the sentence for what a run without any range lacks: the pulse, its times, both, or neither of them. */
export function whyNoRange({ why }: Pick<RunContent['value'], 'why'>) {
  const is = (code: string) => why.some((one) => one.code === code);
  const isUntimed = is('not-timed') || is('no-peak');
  if (is('no-pulse')) return isUntimed ? 'pressure.noRange' : 'postures.noRangePulse';
  return isUntimed ? 'postures.noRangeTimes' : 'postures.noRangeAtAll';
}

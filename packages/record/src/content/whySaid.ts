import type { Flag } from '@evenfall/clinical';

/**
 * Every reason that was said with a value when it was taken: why a figure of it could not be told, and why a longer count
 * was asked for (of taps that stands apart, in `nextWhy`).
 */
export function whySaid(value: {
  readonly why: readonly Flag[];
  readonly nextWhy?: readonly Flag[];
}): readonly Flag[] {
  return [...value.why, ...(value.nextWhy ?? [])];
}

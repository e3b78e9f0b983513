import type { CountOf } from '@evenfall/clinical';

/** What of a round does not stand beside a step: what the page shows itself, or what stays hidden until the new one is in. */
export type LeftOut = CountOf | 'pressure' | 'measures';

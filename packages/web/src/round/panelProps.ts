import type { CountOf } from '@evenfall/clinical';
import type { Round } from './useRound.js';

/** What every panel of a sign is given: the round under way, and which sign it takes. */
export type PanelProps = { readonly round: Round; readonly sign: CountOf };

import type { Flag } from '../contract/flag.js';
import type { Recheck, RecheckCode } from './recheckAfter.js';

/** A repeat as code and figures, for its sentence; a latest time that no source gives is left out. */
export function recheckFlag({ code, fromSeconds, withinSeconds }: Recheck): Flag<RecheckCode> {
  return { code, figures: withinSeconds === null ? { fromSeconds } : { fromSeconds, withinSeconds } };
}

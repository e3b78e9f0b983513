import { goOnPages } from './goOnLater.js';
import type { LeftOut } from './leftOut.js';
import type { Round } from './useRound.js';

type SoFarProps = { readonly round: Round; readonly leftOut: readonly LeftOut[] };

/** What was taken so far, on a page that a round begins with: once the part that tells it is here. */
export function SoFarHere(props: SoFarProps) {
  const pages = goOnPages.here();
  return pages === null ? null : <pages.SoFar {...props} />;
}

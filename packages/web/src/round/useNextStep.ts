import type { RoundStep } from '@evenfall/clinical';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { beforeAnything } from './beforeAnything.js';
import type { RoundDraft } from './draft.js';
import { isAnythingTaken } from './events.js';
import { type GoOnPages, goOnPages } from './goOnLater.js';
import type { RoundStanding } from './standing.js';
import type { Round } from './useRound.js';

type Under = Pick<Round, 'facts' | 'inForce'>;
type Then = (at: Pick<RoundStanding, 'state'> & { readonly step: RoundStep }) => void;

/**
 * What a touch does with what comes next in a round: at once, so that the page goes straight on; only after a reload,
 * where something was taken, as soon as what it comes to can be told.
 *
 * @throws on the page where that cannot be fetched, as a page does whose part cannot
 */
export function useNextStep(): (draft: RoundDraft, under: Under, then: Then) => void {
  const { program } = useApp();
  const [fault, setFault] = useState<unknown>(null);
  if (fault !== null) throw fault;
  return (draft, { facts, inForce }, then) => {
    const pages = goOnPages.here();
    if (pages === null && !isAnythingTaken(draft)) {
      then(beforeAnything(draft, { facts, inForce }));
      return;
    }
    const goOn = ({ standingOf }: GoOnPages) => {
      const { state, next } = standingOf(draft, { facts, inForce, program });
      then({ state, step: next.step });
    };
    if (pages === null) goOnPages.fetch().then(goOn, setFault);
    else goOn(pages);
  };
}

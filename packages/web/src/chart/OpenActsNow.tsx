import type { ChartRound, StoredEntry } from '@evenfall/record';
import { useEffect, useRef, useState } from 'react';
import { CloseActNow } from './CloseActNow.js';
import { useOpenActs } from './useOpenActs.js';

type OpenProps = {
  readonly person: string;
  readonly rounds: readonly ChartRound[];
  readonly entries: readonly StoredEntry[];
};

/** Where every open act-now of a person stands, for a link. */
export const OPEN_ACTS_NOW = 'open-acts-now';

/**
 * Every act-now of a person that nobody closed, of rounds and of series, each with its form: before anything else on the
 * person's page, so that nobody reads an older one that was closed first.
 */
export function OpenActsNow({ person, rounds, entries }: OpenProps) {
  const all = useOpenActs(rounds, entries);
  const [closed, setClosed] = useState<string | null>(null);
  const answer = useRef<HTMLParagraphElement>(null);
  // The form that was written into goes from the page: its reader is led to what came of it.
  useEffect(() => {
    if (closed !== null) answer.current?.focus();
  }, [closed]);
  if (all.length === 0 && closed === null) return null;
  return (
    <div className="round-duties" id={OPEN_ACTS_NOW}>
      {closed === null ? null : (
        <p className="notice" role="status" ref={answer} tabIndex={-1}>
          {closed}
        </p>
      )}
      {all.map(({ id, open, saw, says }) => (
        <CloseActNow
          key={id}
          round={{ id }}
          person={person}
          open={open}
          saw={saw}
          says={says}
          onClosed={setClosed}
        />
      ))}
    </div>
  );
}

import type { Amends, KindName, Stamp } from '@evenfall/record';
import { useState } from 'react';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { useApp } from './context.js';
import type { useForm } from './forms.js';

type Sent = {
  readonly kind: KindName;
  readonly content: Readonly<Record<string, unknown>>;
  /** The schema number of its content, where its kind has another than most. */
  readonly schema?: number;
  readonly amends?: Amends;
  /** The round of its own that it stands under, where it has one. */
  readonly round?: string;
  /** When it was measured, where that is not the moment of the form. */
  readonly measuredAt?: Stamp;
};

/**
 * Sends an entry of the charts that stands in no round from a form; says whether it was taken, and in words why not.
 *
 * @param person whom it is about; null for the place itself
 * @param after reads again what it changed, before the form is empty
 */
export function useSendEntry(
  form: ReturnType<typeof useForm>,
  person: string | null,
  after: () => Promise<unknown>,
) {
  const { words, server, store } = useApp();
  const agent = useMeasuring();
  const [refused, setRefused] = useState<string | null>(null);
  const send = async ({ amends, ...sent }: Sent): Promise<boolean> => {
    setRefused(null);
    if (agent === null) {
      setRefused(words.sentence('review.needsAgent'));
      return false;
    }
    const entry = {
      ...form.entry(),
      book: BOOK,
      schema: WRITTEN_SCHEMA,
      person,
      round: null,
      session: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: amends ?? null,
      ...sent,
    };
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (answer.ok) {
      await after();
      form.done();
      return true;
    }
    setRefused(
      answer.offline
        ? words.sentence('app.unreachable')
        : words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }),
    );
    return false;
  };
  return { send, refused, agent };
}

import type { Amends } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK, loadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';

type FactEntry = {
  readonly kind: 'fact' | 'fact-ended' | 'entered-in-error';
  readonly content: Readonly<Record<string, unknown>>;
  readonly amends?: Amends;
};

/** Sends an entry about a person's facts from a form; says whether it was taken, and in words why not. */
export function useFactEntry(person: string, form: ReturnType<typeof useForm>) {
  const app = useApp();
  const { words, server, store } = app;
  const agent = useMeasuring();
  const [refused, setRefused] = useState<string | null>(null);
  const send = async ({ kind, content, amends = undefined }: FactEntry): Promise<boolean> => {
    setRefused(null);
    if (agent === null) {
      setRefused(words.sentence('review.needsAgent'));
      return false;
    }
    const entry = {
      ...form.entry(),
      book: BOOK,
      kind,
      schema: WRITTEN_SCHEMA,
      person,
      round: null,
      session: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: amends ?? null,
      content,
    };
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (answer.ok) {
      await loadRecord(app, person);
      form.done();
      return true;
    }
    setRefused(
      answer.offline
        ? words.sentence('app.unreachable')
        : words.sentence('app.refusedBy', { text: refusedBecause(answer) ?? words.sentence('app.failed') }),
    );
    return false;
  };
  return { send, refused };
}

import type { Scenario } from '@evenfall/physiology';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';

/** Keeps a scenario of the place in the book of simulations, or takes it off the list; says in words why it was not taken. */
export function useSendScenario(form: ReturnType<typeof useForm>) {
  const { words, server, store } = useApp();
  const agent = useMeasuring();
  const [refused, setRefused] = useState<string | null>(null);
  const send = async (scenario: Scenario, isRetired: boolean): Promise<boolean> => {
    setRefused(null);
    if (agent === null) {
      setRefused(words.sentence('review.needsAgent'));
      return false;
    }
    const entry = {
      ...form.entry(),
      kind: 'scenario',
      book: 'simulated',
      schema: WRITTEN_SCHEMA,
      person: null,
      round: null,
      session: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: null,
      content: { scenario, isRetired },
    } as const;
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (answer.ok) {
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

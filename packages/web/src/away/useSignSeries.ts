import type { Amends, Role, SeriesContent } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { NO_FORM } from '../app/forms.js';
import { SERIES_SCHEMA } from '../round/entries.js';
import { signed, takenBack } from '../round/waiting.js';
import { BOOK } from '../server/load.js';
import type { useIntake } from './useIntake.js';

type Signing = {
  readonly agent: string;
  readonly role: Role;
  readonly content: SeriesContent;
  /** The round of the series that it is added to, with what it amends; null for a series of its own. */
  readonly joined: { readonly round: string; readonly amends: Amends } | null;
};

/** What became of a signing: it waits on this device while the server cannot be asked. */
export type SignedAs = 'taken' | 'waiting' | 'refused';

/** Signs a series as a round is signed: it waits on this device until the server has it, and is sent the same each time. */
export function useSignSeries(
  person: string,
  { form, name }: Pick<ReturnType<typeof useIntake>, 'form' | 'name'>,
) {
  const { store, sending } = useApp();
  const [refused, setRefused] = useState<string | null>(null);
  const sign = async ({ agent, role, content, joined }: Signing): Promise<SignedAs> => {
    setRefused(null);
    const start = form.entry();
    // Under a round of its own, by which its alerts are closed.
    const round = joined?.round ?? form.adds();
    const entry = {
      frame: 1 as const,
      ...start,
      book: BOOK,
      schema: SERIES_SCHEMA,
      kind: 'series' as const,
      person,
      round,
      session: null,
      agent,
      role,
      device: store.get().kept.device,
      amends: joined?.amends ?? null,
      content,
    };
    store.change((state) => {
      const was = state.kept.forms[name] ?? NO_FORM;
      // It waits under its own id: two additions to one series have one round.
      const waiting = { round: start.id, person, entries: [entry], draft: null, form: { name, was }, tries: 0, refused: null }; // biome-ignore format: one thought
      return { ...state, kept: signed(state.kept, waiting) };
    });
    const here = () => store.get().kept.waiting.find((one) => one.round === start.id);
    await sending.now();
    // A sending that was under way began without it.
    if (here()?.tries === 0) await sending.now();
    const waits = here();
    if (waits === undefined) return 'taken';
    if (waits.refused === null) return 'waiting';
    setRefused(waits.refused);
    store.change((state) => ({ ...state, kept: takenBack(state.kept, start.id) }));
    return 'refused';
  };
  return { sign, refused };
}

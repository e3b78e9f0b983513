import type { SignedInHere } from '@evenfall/api';
import type { AccountRole } from '@evenfall/record';
import { useSyncExternalStore } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';

/** Who is signed in; null where nobody has to. */
export function useSignedIn(): SignedInHere | null {
  const { signIn } = useApp();
  const standing = useSyncExternalStore(signIn.subscribe, signIn.get);
  return standing.is === 'in' ? standing.who : null;
}

/** Whether one of the roles may act here; where nobody signs in, everybody may. */
export function useMay(...roles: readonly AccountRole[]): boolean {
  const who = useSignedIn();
  return who === null || roles.some((role) => who.roles.includes(role));
}

/** Who answers for what is done: whoever is signed in, whoever a shared device was passed to; without accounts, who was chosen. */
export function useAnswering(): string | null {
  const who = useSignedIn();
  const chosen = useKept(({ kept }) => kept.agent);
  return who?.agent.id ?? chosen;
}

/** Who measures and charts: beside a bed whoever is signed in; in a class, and without accounts, who was chosen on the device. */
export function useMeasuring(): string | null {
  const who = useSignedIn();
  const { book } = useBook();
  const chosen = useKept(({ kept }) => kept.agent);
  return who === null || book === 'class' ? chosen : who.agent.id;
}

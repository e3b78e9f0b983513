import type { SignedInHere, SignInState } from '@evenfall/api';

/** Whether somebody has to sign in, and who has. */
export type Standing =
  /** Nothing is known yet: the server was not asked before, and has not answered. */
  | { readonly is: 'asking' }
  /** There are no accounts: whoever sits at this device may act. */
  | { readonly is: 'open' }
  | { readonly is: 'in'; readonly who: SignedInHere }
  /**
   * Nobody acts: a PIN or a pass phrase is needed. `here` may go on by PIN. `isUntold`: the device locked itself, and the
   * server, without which nobody gets in, was not told yet.
   */
  | { readonly is: 'out'; readonly here: SignInState['here']; readonly isUntold?: true };

/** What a device remembers between visits of who was signed in, so that a page without network still opens for them. */
export type Remembered = {
  readonly needed: boolean;
  readonly current: SignedInHere | null;
  /** The device locked itself and the server was not told: it may still take it for that of whoever was signed in. */
  readonly isUntold?: true;
};

export function standingOf({ needed, current, here }: SignInState): Standing {
  if (current !== null) return { is: 'in', who: current };
  return needed ? { is: 'out', here } : { is: 'open' };
}

/** How a page begins, before the server is heard. */
export function standingRemembered(remembered: Remembered | null): Standing {
  if (remembered === null) return { is: 'asking' };
  if (remembered.current !== null) return { is: 'in', who: remembered.current };
  if (!remembered.needed) return { is: 'open' };
  return { is: 'out', here: [], ...(remembered.isUntold ? { isUntold: true as const } : {}) };
}

/** Whose drafts and waiting rounds a page keeps: an account's, or, where nobody signs in, the device's. */
export function ownerOf(remembered: Remembered | null): string | null {
  return remembered?.current?.account ?? null;
}

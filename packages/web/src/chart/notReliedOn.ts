import type { Countersigned } from '@evenfall/record';

/** Whether the last supervisor who said anything of a signing, as it stands, did not rely on it. */
export function isNotReliedOn(countersigned: readonly Countersigned[], signing: string): boolean {
  const last = countersigned.at(-1);
  return last !== undefined && last.content.signing === signing && !last.content.agrees;
}

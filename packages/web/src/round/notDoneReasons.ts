import { type CountOf, NOT_DONE_REASONS, type NotDoneReason } from '@evenfall/clinical';

/** The reasons for which a count can be left out: no barred arm keeps anybody from watching a chest. */
export function reasonsOf(sign: CountOf): readonly NotDoneReason[] {
  return sign === 'breaths' ? NOT_DONE_REASONS.filter((one) => one !== 'arm-barred') : NOT_DONE_REASONS;
}

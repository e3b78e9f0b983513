import { type Flag, SIGN_RULE, type Sign, type SignCircumstances, signResult } from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import type { SignContent, TypedNumber } from './sign.js';

/** What was read, and what was added. */
export type SignEvidence = {
  readonly sign: Sign;
  /** The number as it was typed, in its unit; absent or null where nobody said. */
  readonly typed?: TypedNumber | null;
  readonly circumstances: SignCircumstances;
  readonly note: string | null;
};

/** The content of a sign's entry. Its rule goes by no section of the protocol, so it names no preset. */
export function chartSign(
  { sign, typed = null, circumstances, note }: SignEvidence,
  inForce: InForce,
  program: string,
): SignContent {
  const { flags, why } = signResult(sign, circumstances);
  const { presetVersion } = inForce;
  return {
    evidence: { sign: copiedSign(sign), typed, circumstances: { ...circumstances } },
    value: { flags: flags.map(copied), why: why.map(copied) },
    computedBy: { program, rule: SIGN_RULE, preset: null, presetVersion },
    note,
  };
}

function copiedSign(sign: Sign): SignContent['evidence']['sign'] {
  if (sign.of !== 'consciousness' || sign.glasgow === null)
    return { ...sign } as SignContent['evidence']['sign'];
  return { ...sign, glasgow: { ...sign.glasgow } };
}

function copied({ code, figures }: Flag) {
  return { code, figures: { ...figures } };
}

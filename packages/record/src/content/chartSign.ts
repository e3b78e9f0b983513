import { type Flag, SIGN_RULE, type Sign, type SignCircumstances, signResult } from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import type { SignContent } from './sign.js';

/** What was read, and what was added. */
export type SignEvidence = {
  readonly sign: Sign;
  readonly circumstances: SignCircumstances;
  readonly note: string | null;
};

/** The content of a sign's entry. Its rule goes by no section of the protocol, so it names no preset. */
export function chartSign(
  { sign, circumstances, note }: SignEvidence,
  inForce: InForce,
  program: string,
): SignContent {
  const { flags, why } = signResult(sign, circumstances);
  const { presetVersion } = inForce;
  return {
    evidence: { sign: copiedSign(sign), circumstances: { ...circumstances } },
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

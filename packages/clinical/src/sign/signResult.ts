import type { Flag } from '../contract/flag.js';
import { heightFlags, weightFlags } from './body.js';
import type { SignCircumstances } from './circumstances.js';
import type { SignFlagCode } from './codes.js';
import { consciousnessFlags } from './consciousness.js';
import { oxygenFlags } from './oxygenSaturation.js';
import { painFlags } from './pain.js';
import type { Sign } from './sign.js';
import { temperatureFlags } from './temperature.js';

/** What a sign says beyond its number. `why` is always empty: none of these is computed. */
export type SignResult = {
  readonly flags: readonly Flag<SignFlagCode>[];
  readonly why: readonly Flag<never>[];
};

/**
 * What a reader of a sign must know. A flag asks for a look and changes no number.
 *
 * Errors: none; a {@link Sign} has been parsed.
 * Source: bedside handbook 4.1 to 4.4.
 *
 * @example signResult(sign, UNKNOWN_SIGN_CIRCUMSTANCES) // 38.0 degC: flag `fever`
 */
export function signResult(sign: Sign, circumstances: SignCircumstances): SignResult {
  return { flags: flagsOf(sign, circumstances), why: [] };
}

function flagsOf(sign: Sign, circumstances: SignCircumstances): Flag<SignFlagCode>[] {
  switch (sign.of) {
    case 'temperature':
      return temperatureFlags(sign, circumstances);
    case 'oxygen-saturation':
      return oxygenFlags(sign, circumstances);
    case 'pain':
      return painFlags(sign);
    case 'consciousness':
      return consciousnessFlags(sign);
    case 'weight':
      return weightFlags(sign, circumstances);
    case 'height':
      return heightFlags(sign, circumstances);
  }
}

import type { Effect, EffectCode, Truth } from '@evenfall/physiology';
import type { TechniqueLine } from './ledger.js';

/** What technique added at an instant: every effect at work beside the same one as the textbook has it. */
export function techniqueLines(
  asItWas: Truth,
  proper: Truth,
  of: 'systolic' | 'diastolic',
): { readonly onPerson: TechniqueLine[]; readonly onCuff: TechniqueLine[] } {
  const codes = new Set([...asItWas.effects, ...proper.effects].map(({ code }) => code));
  const onPerson: TechniqueLine[] = [];
  const onCuff: TechniqueLine[] = [];
  for (const code of codes) {
    const [was, due] = [effect(asItWas, code), effect(proper, code)];
    const mmHg = (was?.[of] ?? 0) - (due?.[of] ?? 0);
    if (mmHg === 0) continue;
    ((was ?? due)?.actsOn === 'person' ? onPerson : onCuff).push({ code, mmHg });
  }
  return { onPerson, onCuff };
}

function effect({ effects }: Truth, code: EffectCode): Effect | undefined {
  return effects.find((one) => one.code === code);
}

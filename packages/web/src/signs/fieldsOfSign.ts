import { lineOfScore, type Sign } from '@evenfall/clinical';
import type { TypedNumber } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { type Measured, toType } from '../app/typedMeasure.js';
import { asWritten } from '../app/withPoint.js';
import { fieldTyped, unitField } from './typedSign.js';

/** What was kept of a sign: what it is, and the number as it was typed. */
export type KeptSign = { readonly sign: Sign; readonly typed?: TypedNumber | null };

/** The fields of the form as they read what was kept: the other way round than `readTypedSign`. */
export function fieldsOfSign({ sign, typed = null }: KeptSign, say: Say): Readonly<Record<string, string>> {
  const number = (value: number | null) => (value === null ? '' : asWritten(value, say));
  const measured = (key: Measured, kept: number) => {
    const { value, chosen } = toType(kept, typed, key, say.manner);
    return { [fieldTyped(key, say)]: number(value), [unitField(key)]: chosen ?? '' };
  };
  switch (sign.of) {
    case 'temperature':
      return { ...measured('celsius', sign.celsius), site: sign.site };
    case 'oxygen-saturation':
      return {
        percent: number(sign.percent),
        breathes: sign.onOxygen ? 'oxygen' : 'air',
        device: sign.device ?? '',
        litresPerMinute: number(sign.litresPerMinute),
        oxygenPercent: number(sign.oxygenPercent),
        pulsePerMinute: number(sign.pulsePerMinute),
        probe: sign.probe ?? '',
      };
    case 'pain':
      return {
        way: sign.tool,
        score: sign.tool === 'numeric' ? number(sign.score) : '',
        mm: sign.tool === 'visual-analogue' && sign.score !== null ? number(lineOfScore(sign.score)) : '',
        word: sign.word ?? '',
        moving: sign.moving === null ? '' : sign.moving ? 'moving' : 'resting',
        where: sign.where ?? '',
      };
    case 'consciousness':
      return {
        level: sign.level,
        eyes: String(sign.glasgow?.eyes ?? ''),
        verbal: String(sign.glasgow?.verbal ?? ''),
        motor: String(sign.glasgow?.motor ?? ''),
      };
    case 'weight':
      return { ...measured('kg', sign.kg), how: sign.how };
    case 'height':
      return { ...measured('cm', sign.cm), how: sign.how, lying: sign.lying ? 'yes' : '' };
  }
}

import type { AskCode, ReadAgainCode } from '@evenfall/clinical';
import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

/** Why numbers that were typed are looked at again; and why the emergency features are asked: which reading raises the question, and what it is. Source: bedside handbook 3.16. */
export const askDetails = {
  'severe-asks': (f, say) => `${reading(f, say)} is severe and can be an emergency.`,
  'child-high-asks': (f, say) =>
    `${reading(f, say)} is high for this child, at or over the 95th centile of its age, sex and height: with any of these it is an emergency.`,
  'short-child-high-asks': (f, say) =>
    `${reading(f, say)} may be high for this child, whose own limits are not known: it is at or over the 95th centile of a short child of that age, and with any of these it is an emergency.`,
  'read-implausible': (f, say) => `${reading(f, say)} is not what an arm usually gives.`,
  'read-very-low': (f, say) => `${reading(f, say)} is very low.`,
  'read-far-from-before': (f, say) =>
    `The systolic of ${say.short(f.value('systolic'))} is far from the ${say.short(f.value('beforeSystolic'))} of ${say.counted(Math.floor(f.value('minutesAgo')), { one: 'minute', other: 'minutes' })} before.`,
  'read-diastolic-far-from-before': (f, say) =>
    `The diastolic of ${say.short(f.value('diastolic'))} is far from the ${say.short(f.value('beforeDiastolic'))} of ${say.counted(Math.floor(f.value('minutesAgo')), { one: 'minute', other: 'minutes' })} before.`,
} as const satisfies Record<AskCode | ReadAgainCode, Detail>;

/** The reading as far as it has numbers. */
function reading(f: Figures, say: Say): string {
  if (!f.has('diastolic')) return `The systolic of ${say.short(f.value('systolic'))}`;
  if (!f.has('systolic')) return `The diastolic of ${say.short(f.value('diastolic'))}`;
  return `The reading of ${say.short(f.value('systolic'))}/${say.short(f.value('diastolic'))}`;
}

import { roundTo } from '@evenfall/clinical';
import type { PressureAt } from '../pressure/pressureDraft.js';
import type { PracticeDraft } from './keptPractice.js';

type Typing = Extract<PressureAt, { at: 'typing' }>;

/** The keypad as it opens: blank, but for the times of moments that were marked, as fine as anybody would type them. */
export function blankFromMarks(
  method: 'auscultation' | 'palpation',
  marks: PracticeDraft['marks'],
  peakSeconds: number | null,
  measuredAt: Typing['measuredAt'],
): Typing {
  const inRun = peakSeconds === null ? [] : marks.filter((at) => at > peakSeconds);
  const after = (at: number | undefined) =>
    at === undefined || peakSeconds === null ? null : String(roundTo(at - peakSeconds, 1));
  const first = after(inRun[0]);
  const last = inRun.length > 1 && method === 'auscultation' ? after(inRun.at(-1)) : null;
  return {
    at: 'typing',
    method,
    typed: '',
    fields: {
      ...(first === null ? {} : { firstAtSeconds: first }),
      ...(last === null ? {} : { lastAtSeconds: last }),
    },
    reinflated: false,
    measuredAt,
    inflatedAt: null,
  };
}

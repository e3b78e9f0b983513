import type { GaugeLog } from '@evenfall/clinical';
import type { CuffNamed, GaugeNamed } from '@evenfall/record';
import type { InventedAgent } from './invented.js';

/** An invented gauge: who reads it, and what was done with it so many days ago, oldest first. */
export type InventedGauge = {
  readonly named: GaugeNamed;
  readonly readBy: InventedAgent;
  readonly log: readonly {
    readonly daysAgo: number;
    readonly agent: InventedAgent;
    readonly log: GaugeLog;
    readonly note?: string;
  }[];
};

const REFERENCE = 'reference gauge of the clinic, calibrated this year (invented)';

/** Held against the reference at the usual pressures, and out by so many mmHg at each. */
function compared(...out: readonly number[]): GaugeLog {
  const points = out.map((mmHg, index) => ({ referenceMmHg: index * 50, gaugeMmHg: index * 50 + mmHg }));
  return { of: 'comparison', reference: REFERENCE, points };
}

const named = (name: string, room: string, serial: string): GaugeNamed => ({
  what: 'gauge',
  name,
  type: 'aneroid',
  room,
  serial,
  note: null,
});

/** One in order, one whose comparison is overdue, one that failed yesterday. */
export const INVENTED_GAUGES: readonly InventedGauge[] = [
  {
    named: named('Gauge 1', 'Room 1', 'INV-G1'),
    readBy: 'sister',
    log: [
      { daysAgo: 64, agent: 'doctor', log: compared(0, 0, 2, 2, 2) },
      { daysAgo: 64, agent: 'doctor', log: { of: 'leak', fromMmHg: 200, toMmHg: 197, seconds: 60 } },
      { daysAgo: 2, agent: 'sister', log: { of: 'zero', restMmHg: 0 } },
    ],
  },
  {
    named: named('Gauge 2', 'Trolley', 'INV-G2'),
    readBy: 'doctor',
    log: [
      { daysAgo: 240, agent: 'doctor', log: compared(0, -2, 0, 0, 2) },
      { daysAgo: 100, agent: 'doctor', log: { of: 'leak', fromMmHg: 200, toMmHg: 198, seconds: 60 } },
      { daysAgo: 1, agent: 'doctor', log: { of: 'zero', restMmHg: 0 } },
    ],
  },
  {
    named: named('Gauge 3', 'Room 2', 'INV-G3'),
    readBy: 'learner',
    log: [
      { daysAgo: 150, agent: 'doctor', log: compared(0, 0, 2, 2, 2) },
      { daysAgo: 150, agent: 'doctor', log: { of: 'leak', fromMmHg: 200, toMmHg: 197, seconds: 60 } },
      { daysAgo: 3, agent: 'sister', log: { of: 'zero', restMmHg: 2 } },
      {
        daysAgo: 0.2,
        agent: 'sister',
        log: compared(2, 2, 4, 6, 6),
        note: 'Compared after a fall was suspected (invented).',
      },
    ],
  },
];

const cuff = (room: string, id: string, pieces: number, more: Partial<CuffNamed> = {}): CuffNamed => ({
  what: 'cuff',
  room,
  scheme: 'aha-2005',
  cuff: id,
  bladderCm: null,
  pieces,
  note: null,
  ...more,
});

export const INVENTED_CUFFS: readonly CuffNamed[] = [
  cuff('Room 1', 'small-adult', 1),
  cuff('Room 1', 'adult', 2),
  cuff('Room 1', 'large-adult', 1),
  cuff('Room 2', 'adult', 1, { bladderCm: { width: 13, length: 30 } }),
  cuff('Room 2', 'large-adult', 1),
  cuff('Trolley', 'adult', 1),
  cuff('Trolley', 'thigh', 1),
];

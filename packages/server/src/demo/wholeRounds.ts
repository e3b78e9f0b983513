import { keptFrom } from '@evenfall/clinical';
import type { InventedCount, InventedPerson, InventedPressure, InventedSign } from './invented.js';

type Heard = {
  readonly peak: number;
  readonly lost?: number;
  readonly pulse?: number;
  readonly muffled?: number;
  /** How fast the cuff was let down, mmHg/s. */
  readonly rate?: number;
};

/** A run by ear, let down evenly: the moments at the times at which the gauge came to them, to a tenth of a second. */
function heard(systolic: number, diastolic: number, { peak, lost, pulse, muffled, rate = 2.5 }: Heard) {
  const atSeconds = (mmHg: number) => Math.round(((peak - mmHg) / rate) * 10) / 10;
  const moment = (what: string, mmHg: number) => ({ what, mmHg, atSeconds: atSeconds(mmHg) });
  return {
    method: 'auscultation',
    pulsePerMinute: pulse ?? null,
    palpated: { lostMmHg: lost ?? null, backMmHg: null },
    peak: { mmHg: peak, atSeconds: 0 },
    moments: [
      moment('first sound', systolic),
      ...(muffled === undefined ? [] : [moment('muffled', muffled)]),
      moment('last sound', diastolic),
    ],
  };
}

/** Numbers alone, as they are typed. */
function typed(systolic: number, diastolic: number, pulse: number) {
  return {
    method: 'auscultation',
    pulsePerMinute: pulse,
    moments: [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: diastolic },
    ],
  };
}

const minute = (n: number, more: Partial<InventedCount> = {}): InventedCount => ({
  n,
  windowSeconds: 60,
  ...more,
});
const half = (n: number): InventedCount => ({ n, windowSeconds: 30 });
const on = (run: InventedPressure['run'], more: Partial<InventedPressure> = {}): InventedPressure => ({
  run,
  ...more,
});

const ADULT = { cuff: { scheme: 'aha-2005', id: 'adult' }, armCm: 30 } as const;
const ALERT = { of: 'consciousness', level: 'alert' };
const oral = (celsius: number) => ({ of: 'temperature', celsius, site: 'oral' });
/** Signs that were typed in the unit of the scale or thermometer at hand. */
const oralIn = (degF: number): InventedSign => ({
  ...oral(keptFrom(degF, '[degF]')),
  typed: { value: degF, unit: '[degF]' },
});
const weightIn = (lb: number): InventedSign => ({
  of: 'weight',
  kg: keptFrom(lb, '[lb_av]'),
  how: 'measured',
  typed: { value: lb, unit: '[lb_av]' },
});
const heightIn = (inches: number): InventedSign => ({
  of: 'height',
  cm: keptFrom(inches, '[in_i]'),
  how: 'stated',
  lying: false,
  typed: { value: inches, unit: '[in_i]' },
});
const onAir = (percent: number) => ({
  of: 'oxygen-saturation',
  percent,
  onOxygen: false,
  scale: 1,
  probe: 'finger',
});

/** Invented people with whole rounds: numbers for show, which stand for nobody. */
export const WHOLE_ROUNDS: readonly InventedPerson[] = [
  {
    // Three readings, averaged; the second was signed with a slip and put right. A thermometer and scales in other units.
    identity: { name: 'Marit Solvang', birthDate: '1963-02-21', number: 'INV-0007' },
    facts: [
      { daysAgo: 40, about: { fact: 'higher-arm', side: 'right' } },
      { daysAgo: 40, about: { fact: 'usual-cuff', scheme: 'aha-2005', cuff: 'adult' } },
    ],
    rounds: [
      {
        hoursAgo: 960,
        agent: 'sister',
        pulse: half(36),
        breaths: minute(14),
        pressures: [
          on(typed(150, 92, 72), ADULT),
          on(typed(138, 86, 70), { ...ADULT, side: 'left' }),
          on(typed(146, 90, 71), ADULT),
          on(typed(136, 86, 71), { ...ADULT, side: 'left' }),
        ],
        exceptions: [],
      },
      {
        hoursAgo: 1.2,
        agent: 'doctor',
        pulse: half(38),
        breaths: minute(15),
        pressures: [
          on(heard(152, 94, { peak: 184, lost: 154, pulse: 76 }), ADULT),
          on(typed(184, 92, 75), { ...ADULT, meant: typed(148, 92, 75) }),
          on(heard(146, 90, { peak: 182, pulse: 74, rate: 2 }), ADULT),
        ],
        signs: [oralIn(97.9), onAir(97), ALERT, weightIn(151.5), heightIn(66)],
        exceptions: ['not-talking'],
        features: [],
      },
    ],
  },
  {
    // By feel alone, on the arm without the fistula; then lying and standing, by the clock and asked how it felt.
    identity: { name: 'Ansel Brightwater', birthDate: '1938-06-09', number: 'INV-0008' },
    facts: [
      { daysAgo: 700, about: { fact: 'fistula', side: 'left' }, text: 'forearm, in use' },
      { daysAgo: 300, about: { fact: 'irregular-rhythm' } },
    ],
    rounds: [
      {
        hoursAgo: 7,
        agent: 'sister',
        pulse: minute(88, { rhythmFelt: 'irregular' }),
        breaths: minute(20),
        pressures: [
          on(
            {
              method: 'palpation',
              pulsePerMinute: 88,
              palpated: { lostMmHg: 126, backMmHg: null },
              peak: { mmHg: 156, atSeconds: 0 },
              moments: [{ what: 'pulse back', mmHg: 122, atSeconds: 14.1 }],
            },
            ADULT,
          ),
        ],
        signs: [ALERT],
      },
      {
        hoursAgo: 2.5,
        agent: 'doctor',
        pulse: minute(82, { rhythmFelt: 'irregular' }),
        breaths: minute(18),
        pressures: [
          on(typed(148, 84, 78), { ...ADULT, posture: 'lie' }),
          on(typed(126, 78, 84), { ...ADULT, posture: 'stand', uprightMinutes: 1.1, unwellUpright: true }),
          on(typed(130, 80, 84), { ...ADULT, posture: 'stand', uprightMinutes: 3.2, unwellUpright: false }),
        ],
        exceptions: [],
        closed: {
          agent: 'doctor',
          minutesLater: 6,
          conditions: ['unwell-upright'],
          toldWhom: 'Wren Halloran (invented)',
          saidBack: 'stays with him until he is steady, and measures him lying again',
        },
      },
    ],
  },
  {
    // Severe in pregnancy, a few minutes ago: nobody has closed it.
    identity: { name: 'Cleo Marchetti', birthDate: '1996-09-17', number: 'INV-0009' },
    facts: [{ daysAgo: 30, about: { fact: 'pregnancy', weeks: 27 } }],
    rounds: [
      {
        hoursAgo: 0.15,
        agent: 'sister',
        pulse: half(46),
        breaths: minute(18),
        pressures: [
          on(heard(164, 112, { peak: 200, lost: 168, pulse: 92 }), { ...ADULT, posture: 'sit' }),
          on(heard(166, 110, { peak: 198, pulse: 92 }), { ...ADULT, posture: 'sit' }),
        ],
        signs: [oral(36.9), onAir(98), ALERT],
        exceptions: ['calm'],
        features: [],
      },
    ],
  },
  {
    // Heard down to zero: three numbers, and the muffling stands for the diastolic.
    identity: { name: 'Nils Okonjo', birthDate: '1999-12-03', number: 'INV-0010' },
    rounds: [
      {
        hoursAgo: 20,
        agent: 'doctor',
        pulse: half(31),
        breaths: minute(13),
        pressures: [on(heard(118, 0, { peak: 150, lost: 120, pulse: 62, muffled: 62 }), ADULT)],
        exceptions: [],
      },
    ],
  },
  {
    // A child: its limits go by age, height and the sex of the reference tables.
    identity: { name: 'Ida Brandvold', birthDate: '2018-04-11', number: 'INV-0011' },
    facts: [{ daysAgo: 90, about: { fact: 'reference-sex', sex: 'f' } }],
    rounds: [
      {
        hoursAgo: 30,
        agent: 'sister',
        pulse: minute(92),
        breaths: minute(20),
        pressures: [
          on(heard(112, 70, { peak: 140, pulse: 92, rate: 2 }), {
            cuff: { scheme: 'fourth-report-2004', id: 'child' },
            armCm: 19,
          }),
          on(heard(110, 70, { peak: 140, pulse: 90, rate: 2 }), {
            cuff: { scheme: 'fourth-report-2004', id: 'child' },
            armCm: 19,
          }),
        ],
        signs: [
          { of: 'height', cm: 128.5, how: 'measured', lying: false },
          { of: 'weight', kg: 26.4, how: 'measured' },
          { of: 'temperature', celsius: 36.8, site: 'tympanic' },
        ],
        exceptions: [],
      },
    ],
  },
  {
    // A learner's rounds: one agreed to, one not relied on, one that waits beside a supervisor's own reading.
    identity: { name: 'Rufus Adeyemi', birthDate: '1951-10-28', number: 'INV-0012' },
    rounds: [
      {
        hoursAgo: 49,
        agent: 'learner',
        pulse: half(35),
        breaths: minute(15),
        pressures: [on(typed(132, 80, 70), ADULT), on(typed(130, 78, 70), ADULT)],
        countersigned: { agent: 'doctor', minutesLater: 12, agrees: true },
      },
      {
        hoursAgo: 25,
        agent: 'learner',
        pulse: half(30),
        breaths: minute(12),
        pressures: [on(typed(110, 60, 60), ADULT)],
        countersigned: {
          agent: 'sister',
          minutesLater: 20,
          agrees: false,
          note: 'Cuff over a sleeve, let down too fast. To be taken again together.',
        },
      },
      {
        hoursAgo: 0.9,
        agent: 'learner',
        pulse: half(36),
        breaths: minute(16),
        pressures: [
          on(heard(138, 76, { peak: 170, lost: 142, pulse: 72, rate: 4.5 }), ADULT),
          on(heard(136, 78, { peak: 168, pulse: 72, rate: 4 }), ADULT),
        ],
        exceptions: [],
      },
      {
        hoursAgo: 0.6,
        agent: 'sister',
        pulse: half(35),
        breaths: minute(16),
        pressures: [
          on(heard(144, 84, { peak: 172, lost: 144, pulse: 70, rate: 2 }), ADULT),
          on(heard(142, 84, { peak: 172, pulse: 70, rate: 2 }), ADULT),
        ],
        exceptions: [],
      },
    ],
  },
  {
    // Unwell, told at once, and closed: whom, when, and what was said back.
    identity: { name: 'Greta Lomax', birthDate: '1944-07-22', number: 'INV-0013' },
    rounds: [
      {
        hoursAgo: 3.4,
        agent: 'sister',
        pulse: minute(118),
        breaths: minute(26),
        pressures: [on(typed(98, 56, 118), ADULT)],
        signs: [oral(38.6), { ...onAir(93), onOxygen: true, device: 'nasal cannula', litresPerMinute: 2 }],
        closed: {
          agent: 'sister',
          minutesLater: 4,
          conditions: ['early-warning-total-high', 'early-warning-single-part', 'very-fast-breathing'],
          toldWhom: 'Dr Ines Abara (invented)',
          saidBack: 'Comes at once; oxygen up to 4 L, blood cultures, look again in 15 minutes.',
        },
      },
      {
        hoursAgo: 2.9,
        agent: 'doctor',
        pulse: minute(104),
        breaths: minute(22),
        pressures: [on(typed(108, 60, 104), ADULT)],
        signs: [
          oral(38.1),
          { ...onAir(95), onOxygen: true, device: 'nasal cannula', litresPerMinute: 4 },
          ALERT,
        ],
        closed: {
          agent: 'doctor',
          minutesLater: 2,
          conditions: ['early-warning-total-high'],
          toldWhom: 'Wren Halloran (invented)',
          saidBack: 'Heard. Signs every 15 minutes until they settle.',
        },
      },
    ],
  },
];

import { type Figure, figures, type Sureness } from '../contract/figure.js';

/** A guideline's rule for the readings of a round, and how sure we are of it. */
type Guideline = readonly [name: string, source: string, sure: Sureness];

const RJC26 = 'Romanian J Cardiol 2026, 10.2478/rjc-2026-0003 (bedside handbook 3.10)';
const ESC_2024: Guideline = ['esc-2024', `ESC 2024, in ${RJC26}`, 'second-hand'];
const ESC_ESH_2018: Guideline = ['esc-esh-2018', 'ESC/ESH 2018 (bedside handbook 3.10)', 'memory'];
const ESH_2023: Guideline = ['esh-2023', `ESH 2021 and 2023, in ${RJC26}`, 'second-hand'];
const ISH_2020: Guideline = ['ish-2020', `ISH 2020, in ${RJC26}`, 'second-hand'];
const ACC_2017: Guideline = ['acc-aha-2017', 'Whelton 2018, Hypertension 71:1269', 'second-hand'];
const ACC_2025: Guideline = ['acc-aha-2025', `AHA/ACC 2025, in ${RJC26}`, 'second-hand'];
const AHA_2005: Guideline = [
  'aha-2005',
  'Pickering 2005, Hypertension 45:142, as an occupational guide uses it (bedside handbook 3.10)',
  'second-hand',
];
const JACC: Guideline = [
  'two-within-10',
  'table of office measurement on a cardiology journal’s site, title of its document not seen (bedside handbook 3.10)',
  'found',
];
const JSH_2019: Guideline = ['jsh-2019', `JSH 2019, in ${RJC26}`, 'second-hand'];
const NICE: Guideline = ['nice-ng136', 'NICE NG136, 1.1 and 1.2', 'found'];
const CANADA: Guideline = ['hypertension-canada', `Hypertension Canada 2025, in ${RJC26}`, 'second-hand'];
const KOREA: Guideline = ['korea-2013', 'Korean Society of Hypertension 2013, table 4', 'found'];
const AAP: Guideline = ['aap-2017', 'Flynn 2017, Pediatrics 140:e20171904 (bedside handbook 3.10)', 'memory'];
const WHO: Guideline = ['who-2021', 'WHO HEARTS (bedside handbook 3.10)', 'memory'];

const SEVERE = 'bedside handbook 3.16';

/**
 * Every number of the rules of a round: how many readings and which average, the two arms, when to look again. The
 * protocol's sections `readings`, `arms` and `recheck` start from these; the limits of acting at once live with the
 * rules that they belong to (see `actNowLimits.ts`), but for two.
 */
export const ROUND_FIGURES = figures({
  escReadings: readings(3, ESC_2024),
  escDifferenceMmHg: difference(10, ESC_2024),
  escGapSeconds: gap(60, ESC_2024),
  escEshReadings: readings(3, ESC_ESH_2018),
  escEshDifferenceMmHg: difference(10, ESC_ESH_2018),
  escEshGapSeconds: gap(60, ESC_ESH_2018),
  eshReadings: readings(3, ESH_2023),
  eshDifferenceMmHg: difference(10, ESH_2023),
  eshGapSeconds: gap(60, ESH_2023),
  ishReadings: readings(3, ISH_2020),
  ishGapSeconds: gap(60, ISH_2020),
  ishOneEnoughSystolic: oneEnough(130, 'systolic', ISH_2020),
  ishOneEnoughDiastolic: oneEnough(85, 'diastolic', ISH_2020),
  acc2017Readings: readings(2, ACC_2017),
  acc2017GapSeconds: gap(60, [ACC_2017[0], ACC_2017[1], 'memory']),
  acc2025Readings: readings(2, ACC_2025),
  acc2025GapSeconds: gap(60, ACC_2025),
  ahaReadings: readings(2, AHA_2005),
  ahaDifferenceMmHg: difference(5, AHA_2005),
  ahaGapSeconds: gap(60, AHA_2005),
  jaccReadings: readings(2, JACC),
  jaccDifferenceMmHg: difference(10, JACC),
  jshReadings: readings(2, JSH_2019),
  jshDifferenceMmHg: difference(5, JSH_2019),
  jshGapSeconds: gap(60, JSH_2019),
  niceReadings: readings(2, NICE),
  niceOneEnoughSystolic: oneEnough(140, 'systolic', NICE),
  niceOneEnoughDiastolic: oneEnough(90, 'diastolic', NICE),
  niceDifferenceMmHg: difference(10, [
    NICE[0],
    'NICE NG136 says "substantially different" and no number; bedside handbook appendix C proposes this one',
    'decision',
  ]),
  canadaReadings: readings(3, CANADA),
  canadaGapSeconds: gap(60, CANADA),
  koreaReadings: readings(2, KOREA),
  koreaGapSeconds: gap(60, KOREA),
  aapReadings: readings(3, AAP),
  whoReadings: readings(2, WHO),
  whoGapSeconds: gap(60, WHO),
  gapSeconds: row(
    60,
    's',
    'least time between two readings where the guideline gives none',
    'habit of laboratories, from memory; one learning page and most guidelines (bedside handbook 3.10)',
    'memory',
  ),
  irregularReadings: row(
    3,
    'readings',
    'fewest readings of an irregular pulse, whatever the level and the guideline; the mean of all is used',
    'British and Irish Hypertension Society 2019, J Hum Hypertens, s41371-019-0261-4; Korean guideline 2013',
    'found',
  ),
  stopAtReadings: row(
    5,
    'readings',
    'no more are asked for after these',
    'bedside handbook 3.11',
    'practice',
  ),

  niceArmMmHg: arms(15, 'nice-ng136', 'NICE NG136, 1.1', 'found'),
  ishArmMmHg: arms(10, 'ish-2020', 'ISH 2020 (bedside handbook 3.12)', 'second-hand'),
  escArmMmHg: arms(10, 'esc-2024, esc-esh-2018 and esh-2023', 'bedside handbook 3.12', 'memory'),
  armPairs: row(
    2,
    'pairs',
    'pairs of readings before a difference of the arms counts',
    'NICE NG136, 1.1; ISH 2020 (bedside handbook 3.12)',
    'second-hand',
  ),
  lookFurtherMmHg: row(
    20,
    'mmHg',
    'systolic of one arm this far from that of the other: somebody looks further',
    'ISH 2020 (bedside handbook 3.12)',
    'second-hand',
  ),

  restSeconds: row(
    300,
    's',
    'quiet rest before a pressure; 0 for none',
    'bedside handbook 3.1 (AHA 2005, ACC/AHA 2017 and 2025: 5 minutes; ESH 3 to 5)',
    'second-hand',
  ),

  lyingBeforeMinutes: row(
    5,
    'min',
    'to lie before the reading from which a fall on standing is told',
    'therapeutic guideline text on orthostatic hypotension (bedside handbook 3.14)',
    'found',
  ),
  longestLyingMinutes: row(
    1440,
    'min',
    'a longer time lying is refused: a day',
    'decision of this project',
    'decision',
  ),

  atOnceWithinSeconds: delay(
    60,
    'very low or unwell: repeated by hand at once, which is within this (our number)',
    'decision',
  ),
  abnormalSoonSeconds: delay(60, 'unexpectedly high or low: repeated not before this', 'second-hand'),
  abnormalSoonWithinSeconds: delay(120, 'unexpectedly high or low: repeated within this', 'second-hand'),
  abnormalLaterSeconds: delay(
    600,
    'unexpectedly high or low: repeated again after a rest of this',
    'practice',
  ),
  abnormalLaterWithinSeconds: delay(900, 'unexpectedly high or low: repeated again within this', 'practice'),
  preparationRestMinutes: row(
    5,
    'min',
    'to sit quietly before a pressure is taken',
    'AHA 2005, ACC/AHA 2017, AHA/ACC 2025 (bedside handbook 3.1)',
    'second-hand',
  ),
  preparationClearMinutes: row(
    30,
    'min',
    'without caffeine, tobacco and exercise before a pressure is taken',
    'AHA 2005, ACC/AHA 2017, AHA/ACC 2025 (bedside handbook 3.1)',
    'second-hand',
  ),
  severeRestSeconds: row(
    300,
    's',
    'severe without an emergency feature: a rest of this, then repeated by hand',
    SEVERE,
    'memory',
  ),
  pregnancyWithinSeconds: row(
    900,
    's',
    'severe in pregnancy and the weeks after: repeated within this',
    SEVERE,
    'memory',
  ),

  weeksAfterBirth: row(6, 'weeks', 'the limits of pregnancy hold on after birth', SEVERE, 'memory'),
  pregnancyAskFromMonths: row(
    120,
    'months',
    'youngest age at which a severe pressure asks for pregnancy',
    'bedside handbook 3.16 asks everybody; our bound so that the question is taken seriously',
    'decision',
  ),
  pregnancyAskUnderMonths: row(
    720,
    'months',
    'a severe pressure asks for pregnancy under this age',
    'bedside handbook 3.16 asks everybody; our bound so that the question is taken seriously',
    'decision',
  ),
  readFarMmHg: row(
    40,
    'mmHg',
    'a typed systolic this far or further from that of the reading before is asked about',
    'common practice (a number is looked at beside the one before it); the distance is ours',
    'decision',
  ),
  readDiastolicFarMmHg: row(
    30,
    'mmHg',
    'a typed diastolic this far or further from that of the reading before is asked about',
    'common practice (a number is looked at beside the one before it); the distance is ours',
    'decision',
  ),
  readBeforeMinutes: row(
    60,
    'min',
    'a reading that is not older than this is one that a typed one is held against',
    'common practice (a number is looked at beside the one before it); the time is ours',
    'decision',
  ),
  clocksApartMinutes: row(
    2,
    'min',
    'a reading that seems later than one typed by no more than this was before it, on a device whose clock is ahead',
    'no source; how far two devices at one bed may differ is ours',
    'decision',
  ),
  childSlowPulsePerMinute: row(
    60,
    '/min',
    'slow pulse of a child: with poor perfusion, resuscitation begins',
    'child resuscitation teaching (bedside handbook 1.7)',
    'second-hand',
  ),
});

function row(value: number, unit: string, meaning: string, source: string, sure: Sureness): Figure {
  return { value, unit, meaning, source, sure };
}

function readings(value: number, [name, source, sure]: Guideline): Figure {
  return row(value, 'readings', `fewest readings to average, ${name}`, source, sure);
}

function difference(value: number, [name, source, sure]: Guideline): Figure {
  const meaning = `systolic or diastolic of two readings in a row this far apart: another, ${name}`;
  return row(value, 'mmHg', meaning, source, sure);
}

function gap(value: number, [name, source, sure]: Guideline): Figure {
  return row(value, 's', `least time between two readings, ${name}`, source, sure);
}

function oneEnough(value: number, of: string, [name, source, sure]: Guideline): Figure {
  return row(value, 'mmHg', `a first reading with a ${of} below this is enough, ${name}`, source, sure);
}

function arms(value: number, name: string, source: string, sure: Sureness): Figure {
  const meaning = `systolic of one arm this far from that of the other, on a repeat: the higher arm, ${name}`;
  return row(value, 'mmHg', meaning, source, sure);
}

function delay(value: number, meaning: string, sure: Sureness): Figure {
  return row(value, 's', meaning, 'bedside handbook 3.15', sure);
}

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
const PALS = 'Pediatric Advanced Life Support 2006 and 2015 (bedside handbook 3.17)';
const RCP = 'Royal College of Physicians 2017, National Early Warning Score 2 (bedside handbook 5.2)';

/**
 * Every number of the rules of a round: how many readings and which average, the two arms, when to look again, and
 * when somebody must act at once. The protocol's sections `readings`, `arms`, `recheck` and `actNow` start from these.
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

  atOnceWithinSeconds: delay(
    60,
    'very low or unwell: repeated by hand at once, by this at the latest',
    'practice',
  ),
  abnormalSoonSeconds: delay(60, 'unexpectedly high or low: repeated not before this', 'second-hand'),
  abnormalSoonWithinSeconds: delay(120, 'unexpectedly high or low: repeated within this', 'second-hand'),
  abnormalLaterSeconds: delay(
    600,
    'unexpectedly high or low: repeated again after a rest of this',
    'practice',
  ),
  abnormalLaterWithinSeconds: delay(900, 'unexpectedly high or low: repeated again within this', 'practice'),
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

  severeSystolic: limit(180, 'systolic that is severe', 'NICE NG136 (bedside handbook 3.16)', 'found'),
  severeDiastolic: limit(120, 'diastolic that is severe', 'NICE NG136 (bedside handbook 3.16)', 'found'),
  eshSevereDiastolic: limit(110, 'diastolic that is severe, esh-2023', `ESH (${SEVERE})`, 'second-hand'),
  pregnancySystolic: limit(160, 'systolic that is severe in pregnancy', SEVERE, 'memory'),
  pregnancyDiastolic: limit(110, 'diastolic that is severe in pregnancy', SEVERE, 'memory'),
  weeksAfterBirth: row(6, 'weeks', 'the limits of pregnancy hold on after birth', SEVERE, 'memory'),
  childAboveP95MmHg: limit(30, 'so far above the 95th centile, at once for a child', SEVERE, 'memory'),
  adolescentSystolic: limit(180, 'systolic at once for an adolescent', SEVERE, 'memory'),
  adolescentDiastolic: limit(120, 'diastolic at once for an adolescent', SEVERE, 'memory'),
  adultFromMonths: row(
    216,
    'months',
    'below this the rules of a child hold',
    'bedside handbook 6.1',
    'decision',
  ),
  newbornUnderMonths: age(1, 'a newborn'),
  infantUnderMonths: age(12, 'an infant'),
  formulaUpToYears: row(
    10,
    'completed years',
    'the low limit of a child grows with age up to this',
    PALS,
    'second-hand',
  ),
  newbornLowSystolic: limit(60, 'low systolic of a newborn', PALS, 'second-hand'),
  infantLowSystolic: limit(70, 'low systolic of an infant', PALS, 'second-hand'),
  childLowBaseSystolic: limit(70, 'low systolic of a child at age 0 of the formula', PALS, 'second-hand'),
  childLowPerYear: row(2, 'mmHg a year', 'what each completed year adds to it', PALS, 'second-hand'),
  olderChildLowSystolic: limit(90, 'low systolic above the ages of the formula', PALS, 'second-hand'),
  veryLowSystolic: limit(90, 'very low systolic of an adult', RCP, 'second-hand'),
  scoreAdultFromMonths: row(192, 'months', 'the limits of the score hold from this age', RCP, 'second-hand'),
  highTotal: points(7, 'early-warning total that is high'),
  mediumTotal: points(5, 'early-warning total that is medium'),
  singlePoints: points(3, 'points of one part that alarm by themselves'),
  verySlowPulsePerMinute: rate(40, 'very slow pulse', '/min'),
  veryFastPulsePerMinute: rate(131, 'very fast pulse', '/min'),
  verySlowBreathsPerMinute: rate(8, 'very slow breathing', '/min'),
  veryFastBreathsPerMinute: rate(25, 'very fast breathing', '/min'),
  lowOxygenPercent: rate(91, 'low oxygen saturation, scale 1', '%'),
  lowOxygenScale2Percent: rate(83, 'low oxygen saturation, scale 2', '%'),
  childLowOxygenPercent: row(
    92,
    '%',
    'low oxygen saturation of a child',
    'bedside handbook 4.2',
    'second-hand',
  ),
  childSlowPulsePerMinute: row(
    60,
    '/min',
    'slow pulse of a child: with poor perfusion, resuscitation begins',
    'child resuscitation teaching (bedside handbook 1.7)',
    'second-hand',
  ),
  childSlowUnderMonths: row(
    156,
    'months',
    'up to this age the slow pulse of a child is judged; no source names an age',
    'age from which adult limits of pressure are used, Flynn 2017 (bedside handbook 6.2)',
    'decision',
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

function limit(value: number, meaning: string, source: string, sure: Sureness): Figure {
  return row(value, 'mmHg', meaning, source, sure);
}

function age(value: number, meaning: string): Figure {
  return row(value, 'months', `under this age ${meaning}`, PALS, 'second-hand');
}

function points(value: number, meaning: string): Figure {
  return row(value, 'points', meaning, RCP, 'second-hand');
}

function rate(value: number, meaning: string, unit: string): Figure {
  return row(value, unit, meaning, RCP, 'second-hand');
}

import { type Figure, figures, type Sureness } from '../contract/figure.js';

type Origin = { readonly source: string; readonly sure: Sureness };

const book = (section: string, sure: Sureness, who = ''): Origin => ({
  source: `${who === '' ? '' : `${who} `}(out-of-office handbook ${section})`.trim(),
  sure,
});

const NICE = book('2, 8', 'second-hand', 'NICE NG136, quoted by two primary-care references');
const NICE_TARGET = book('8.1', 'memory', 'NICE NG136');
const CANADA = book('2, 5, 8', 'found', 'Hypertension Canada (CHEP 2017 tables; current page)');
const AHA_AMA = book('2', 'memory', 'AHA/AMA 2020 joint policy');
const TWELVE = book('2', 'found', 'AHA 2019 statement, as the LOINC definition of a mean pressure cites it');
const ACC = book('8', 'found', 'ACC/AHA 2025 pocket guideline, table 7');
const ESC = book('2, 5, 8', 'memory', 'ESC 2024');
const ESH = book('2, 5, 8', 'memory', 'ESH 2021 and 2023');
const ISH = book('2, 8', 'second-hand', 'ISH 2020');
const ISH_PROTOCOL = book('2', 'memory', 'ISH 2020');
const JSH = book('2, 8', 'memory', 'JSH 2019');
const KOREA = book('2', 'found', 'Korean Society of Hypertension 2018, Clin Hypertens 2019;25, table 2');
const AUSTRALIA = book('2, 5, 8', 'memory', 'Australian consensus 2015 and guideline 2016');
const AUSTRALIA_HOME = book('2, 8', 'found', 'Australian guideline 2016; Australian Prescriber');
const FAMILY = book('2', 'found', 'J Am Board Fam Med, protocol table');
const FRANCE = book('2', 'memory', 'French rule of three');
const TAIWAN = book('2, 8', 'memory', 'Taiwan 722 protocol and 2022 guideline');
const TAIWAN_WORN = book('8', 'memory-low', 'Taiwan 2022 guideline');
const HEAD = book('8', 'memory-low', 'Head 2010, values equivalent to 140/90 in the clinic');
const EARLY = book('8', 'found', 'table of an occupational-medicine journal, about 2000');
const SEVENTY = book('5', 'second-hand', 'ESH 2013 to 2023, cited by two others as the standard');
const OLDER = book('5', 'found', 'older IDACO rule');
const IDACO_CLOCK = book(
  '7',
  'found',
  'IDACO in Europe and South America, as Booth 2016, J Hypertens 34:235, has it',
);
const COMMON: Origin = { source: 'common practice, no source', sure: 'decision' };
const DECIDED: Origin = { source: 'no source: decision of this project', sure: 'decision' };
const OWN = (section: string): Origin => book(section, 'decision');

const mmHg = (value: number, meaning: string, origin: Origin): Figure => ({
  value,
  unit: 'mmHg',
  meaning,
  ...origin,
});
const days = (value: number, meaning: string, origin: Origin): Figure => ({
  value,
  unit: 'days',
  meaning,
  ...origin,
});
const readings = (value: number, meaning: string, origin: Origin): Figure => ({
  value,
  unit: 'readings',
  meaning,
  ...origin,
});
const minuteOfDay = (hour: number, meaning: string, origin: Origin): Figure => ({
  value: hour * 60,
  unit: 'minutes from midnight',
  meaning,
  ...origin,
});
const pulse = (value: number, meaning: string, origin: Origin): Figure => ({
  value,
  unit: 'per minute',
  meaning,
  ...origin,
});
const plain = (value: number, unit: string, meaning: string, origin: Origin): Figure => ({
  value,
  unit,
  meaning,
  ...origin,
});

const HOME_HIGH = 'a mean at home of this or more is high';
const DAY_ONE = 'first days of measuring that are not averaged';
const LEAST_DAYS = 'fewest days of measuring, those left out counted';
const LEAST_READINGS = 'fewest readings for a mean, after leaving out';
const RANGE_A = book('6', 'memory', 'range rule A, widely printed');
const RANGE_B = book('6', 'memory-low', 'range rule B, Casadei type');
const RATIO = book('6', 'memory-low', 'ratio rule, Clark and Marler type');
const KEPT = 'a reading at this limit is kept';
const DIP = book('9', 'found', 'Fagard 2009, Expert Rev Cardiovasc Ther 7:599');

/** Every number of home diaries and recordings over 24 hours, under the names of their guidelines. */
export const OUT_OF_OFFICE_FIGURES = figures({
  homeHighSystolic: mmHg(135, HOME_HIGH, ISH),
  homeHighDiastolic: mmHg(85, HOME_HIGH, ISH),
  homeReadingsInSitting: readings(2, 'readings in a sitting at home', ISH_PROTOCOL),
  homeDays: days(7, 'days of measuring that are asked for', ISH_PROTOCOL),
  homeDroppedDays: days(1, DAY_ONE, ISH_PROTOCOL),
  homeNoDroppedDays: days(0, DAY_ONE, ESC),
  homeLeastDays: days(3, LEAST_DAYS, ISH_PROTOCOL),
  homeLeastReadings: readings(8, `${LEAST_READINGS}: two days after the first, four readings a day`, {
    source: 'not stated by the guideline (out-of-office handbook 2); from its least days',
    sure: 'derived',
  }),
  homeUnstatedReadings: readings(
    12,
    `${LEAST_READINGS}, where a guideline states neither days nor readings`,
    TWELVE,
  ),
  niceLeastDays: days(4, LEAST_DAYS, NICE),
  niceLeastReadings: readings(12, `${LEAST_READINGS}: four days without the first, four a day`, {
    source: NICE.source,
    sure: 'derived',
  }),
  niceStage2Systolic: mmHg(150, 'stage 2 begins at a mean at home of this', NICE),
  niceStage2Diastolic: mmHg(95, 'stage 2 begins at a mean at home of this', NICE),
  niceDayStage2Systolic: mmHg(150, 'stage 2 begins at a mean by day of this', NICE),
  niceDayStage2Diastolic: mmHg(95, 'stage 2 begins at a mean by day of this', NICE),
  niceHighSystolic: mmHg(135, HOME_HIGH, NICE),
  niceHighDiastolic: mmHg(85, HOME_HIGH, NICE),
  canadaHighSystolic: mmHg(135, HOME_HIGH, CANADA),
  canadaHighDiastolic: mmHg(85, HOME_HIGH, CANADA),
  canadaDroppedDays: days(1, DAY_ONE, CANADA),
  ahaAmaLeastReadings: readings(12, LEAST_READINGS, AHA_AMA),
  ahaAmaLeastDays: days(3, LEAST_DAYS, AHA_AMA),
  ahaAmaDroppedDays: days(0, `${DAY_ONE}; some material of that country leaves the first out`, {
    source: AHA_AMA.source,
    sure: 'memory-low',
  }),
  accHighSystolic: mmHg(130, HOME_HIGH, ACC),
  accHighDiastolic: mmHg(80, HOME_HIGH, ACC),
  accElevatedSystolic: mmHg(120, 'elevated begins at a mean at home of this', ACC),
  accStage2Systolic: mmHg(135, 'what an office pressure of 140 is at home', ACC),
  accStage2Diastolic: mmHg(85, 'what an office pressure of 90 is at home', ACC),
  accDroppedDays: days(0, DAY_ONE, book('2', 'memory', 'ACC/AHA 2017')),
  escHighSystolic: mmHg(135, HOME_HIGH, ESC),
  escHighDiastolic: mmHg(85, HOME_HIGH, ESC),
  escElevatedSystolic: mmHg(120, 'elevated begins at a mean at home of this', ESC),
  escElevatedDiastolic: mmHg(70, 'elevated begins at a mean at home of this', ESC),
  escLeastDays: days(3, LEAST_DAYS, ESC),
  escLeastReadings: readings(12, `${LEAST_READINGS}: three days, four a day`, {
    source: ESC.source,
    sure: 'derived',
  }),
  eshHighSystolic: mmHg(135, HOME_HIGH, ESH),
  eshHighDiastolic: mmHg(85, HOME_HIGH, ESH),
  eshDroppedDays: days(1, DAY_ONE, ESH),
  eshLeastDays: days(3, LEAST_DAYS, ESH),
  eshLeastReadings: readings(12, LEAST_READINGS, ESH),
  jshHighSystolic: mmHg(135, HOME_HIGH, JSH),
  jshHighDiastolic: mmHg(85, HOME_HIGH, JSH),
  jshDroppedDays: days(0, DAY_ONE, JSH),
  jshLeastDays: days(5, LEAST_DAYS, JSH),
  jshHighNormalSystolic: mmHg(115, 'high-normal begins at a mean at home of this', JSH),
  jshElevatedSystolic: mmHg(125, 'elevated begins at a mean at home of this', JSH),
  jshElevatedDiastolic: mmHg(75, 'elevated begins at a mean at home of this', JSH),
  jshGrade2Systolic: mmHg(145, 'grade 2 begins at a mean at home of this', JSH),
  jshGrade2Diastolic: mmHg(90, 'grade 2 begins at a mean at home of this', JSH),
  jshGrade3Systolic: mmHg(160, 'grade 3 begins at a mean at home of this', JSH),
  jshGrade3Diastolic: mmHg(100, 'grade 3 begins at a mean at home of this', JSH),
  jshReadingsInSitting: readings(2, 'readings in a sitting at home; one is accepted', JSH),
  koreaDroppedDays: days(0, DAY_ONE, KOREA),
  koreaLeastDays: days(5, LEAST_DAYS, KOREA),
  australiaHighSystolic: mmHg(135, HOME_HIGH, AUSTRALIA_HOME),
  australiaHighDiastolic: mmHg(85, HOME_HIGH, AUSTRALIA_HOME),
  australiaDroppedDays: days(1, DAY_ONE, AUSTRALIA),
  australiaLeastDays: days(5, LEAST_DAYS, AUSTRALIA_HOME),
  familyReadingsInSitting: readings(3, 'readings in a sitting at home', FAMILY),
  familyDroppedDays: days(2, DAY_ONE, FAMILY),
  familyLeastDays: days(5, LEAST_DAYS, FAMILY),
  familyLeastReadings: readings(12, `${LEAST_READINGS}: three days, two of three in each sitting`, {
    source: FAMILY.source,
    sure: 'derived',
  }),
  franceReadingsInSitting: readings(3, 'readings in a sitting at home', FRANCE),
  franceDroppedDays: days(0, DAY_ONE, FRANCE),
  franceLeastDays: days(3, LEAST_DAYS, FRANCE),
  franceLeastReadings: readings(12, LEAST_READINGS, FRANCE),
  franceHighSystolic: mmHg(135, HOME_HIGH, FRANCE),
  franceHighDiastolic: mmHg(85, HOME_HIGH, FRANCE),
  taiwanDroppedDays: days(1, DAY_ONE, TAIWAN),
  taiwanHighSystolic: mmHg(130, HOME_HIGH, TAIWAN),
  taiwanHighDiastolic: mmHg(80, HOME_HIGH, TAIWAN),

  dayStartsAt: minuteOfDay(4, 'a day at home begins: an earlier reading is of the evening before', OWN('3')),
  eveningFrom: minuteOfDay(16, 'the evening begins', OWN('3')),
  morningTo: minuteOfDay(12, 'the morning ends', OWN('3')),
  sittingGapMinutes: plain(
    30,
    'minutes',
    'a reading less than this after the one before is of the same sitting',
    OWN('3'),
  ),
  usedOfSitting: readings(2, 'readings used of a sitting where a rule uses the first ones alone', OWN('3')),

  leastPercent: plain(70, '%', 'least share of the scheduled readings that must be kept', SEVENTY),
  leastDayReadings: readings(20, 'fewest readings by day', SEVENTY),
  leastNightReadings: readings(7, 'fewest readings by night', SEVENTY),
  niceLeastDayReadings: readings(
    14,
    'fewest readings in waking hours',
    book('5', 'second-hand', 'NICE NG136'),
  ),
  researchDayReadings: readings(
    8,
    'fewest readings awake in research on levels',
    book('5', 'found', 'IDACO 2018'),
  ),
  researchNightReadings: readings(
    4,
    'fewest readings asleep in research on levels',
    book('5', 'found', 'IDACO 2018'),
  ),
  olderResearchDayReadings: readings(10, 'fewest readings by day in research on levels, older rule', OLDER),
  olderResearchNightReadings: readings(
    5,
    'fewest readings by night in research on levels, older rule',
    OLDER,
  ),
  olderResearchEmptyHours: plain(
    3,
    'h',
    'a stretch of so many hours without a reading, and the recording is to be repeated',
    OLDER,
  ),
  canadaLeastHours: plain(
    24,
    'h',
    'a recording lasts at least as long',
    book('5', 'found', 'Hypertension Canada, CHEP 2017 tables'),
  ),
  profileMostMinutes: plain(
    30,
    'minutes',
    'between readings, throughout: further apart and most numbers of the profile stray by more than a quarter of their spread',
    book('5', 'found', 'Thijs 1994, J Hum Hypertens 8:239'),
  ),
  variabilityReadings: readings(
    48,
    'fewest readings in 24 hours for their variability',
    book('5', 'found', 'Mena 2014'),
  ),
  wholeHighSystolic: mmHg(130, 'a 24-hour mean of this or more is high', ISH),
  wholeHighDiastolic: mmHg(80, 'a 24-hour mean of this or more is high', ISH),
  dayHighSystolic: mmHg(135, 'a mean by day of this or more is high', ISH),
  dayHighDiastolic: mmHg(85, 'a mean by day of this or more is high', ISH),
  nightHighSystolic: mmHg(120, 'a mean by night of this or more is high', ISH),
  nightHighDiastolic: mmHg(70, 'a mean by night of this or more is high', ISH),
  accWholeHighSystolic: mmHg(125, 'a 24-hour mean of this or more is high', ACC),
  accWholeHighDiastolic: mmHg(75, 'a 24-hour mean of this or more is high', ACC),
  accDayHighSystolic: mmHg(130, 'a mean by day of this or more is high', ACC),
  accDayHighDiastolic: mmHg(80, 'a mean by day of this or more is high', ACC),
  accNightHighSystolic: mmHg(110, 'a mean by night of this or more is high', ACC),
  accNightHighDiastolic: mmHg(65, 'a mean by night of this or more is high', ACC),
  accWholeElevatedSystolic: mmHg(115, 'elevated begins at a 24-hour mean of this', ACC),
  accDayElevatedSystolic: mmHg(120, 'elevated begins at a mean by day of this', ACC),
  accNightElevatedSystolic: mmHg(100, 'elevated begins at a mean by night of this', ACC),
  accWholeStage2Systolic: mmHg(130, 'what an office pressure of 140 is over 24 hours', ACC),
  accWholeStage2Diastolic: mmHg(80, 'what an office pressure of 90 is over 24 hours', ACC),
  accDayStage2Systolic: mmHg(135, 'what an office pressure of 140 is by day', ACC),
  accDayStage2Diastolic: mmHg(85, 'what an office pressure of 90 is by day', ACC),
  accNightStage2Systolic: mmHg(120, 'what an office pressure of 140 is by night', ACC),
  accNightStage2Diastolic: mmHg(70, 'what an office pressure of 90 is by night', ACC),
  escWholeElevatedSystolic: mmHg(115, 'elevated begins at a 24-hour mean of this', ESC),
  escWholeElevatedDiastolic: mmHg(65, 'elevated begins at a 24-hour mean of this', ESC),
  escDayElevatedSystolic: mmHg(120, 'elevated begins at a mean by day of this', ESC),
  escDayElevatedDiastolic: mmHg(70, 'elevated begins at a mean by day of this', ESC),
  escNightElevatedSystolic: mmHg(110, 'elevated begins at a mean by night of this', ESC),
  escNightElevatedDiastolic: mmHg(60, 'elevated begins at a mean by night of this', ESC),
  taiwanWholeHighSystolic: mmHg(130, 'a 24-hour mean of this or more is high', TAIWAN_WORN),
  taiwanWholeHighDiastolic: mmHg(80, 'a 24-hour mean of this or more is high', TAIWAN_WORN),
  taiwanDayHighSystolic: mmHg(130, 'a mean by day of this or more is high', TAIWAN_WORN),
  taiwanDayHighDiastolic: mmHg(80, 'a mean by day of this or more is high', TAIWAN_WORN),
  taiwanNightHighSystolic: mmHg(110, 'a mean by night of this or more is high', TAIWAN_WORN),
  taiwanNightHighDiastolic: mmHg(65, 'a mean by night of this or more is high', TAIWAN_WORN),
  headWholeHighSystolic: mmHg(133, 'a 24-hour mean of this or more is high', HEAD),
  headWholeHighDiastolic: mmHg(84, 'a 24-hour mean of this or more is high', HEAD),
  headDayHighSystolic: mmHg(136, 'a mean by day of this or more is high', HEAD),
  headDayHighDiastolic: mmHg(87, 'a mean by day of this or more is high', HEAD),
  headNightHighSystolic: mmHg(121, 'a mean by night of this or more is high', HEAD),
  headNightHighDiastolic: mmHg(76, 'a mean by night of this or more is high', HEAD),
  earlyHomeHighSystolic: mmHg(140, 'a mean at home of more than this is clearly high', EARLY),
  earlyHomeHighDiastolic: mmHg(90, 'a mean at home of more than this is clearly high', EARLY),
  earlyWholeHighSystolic: mmHg(135, 'a 24-hour mean of more than this is clearly high', EARLY),
  earlyWholeHighDiastolic: mmHg(85, 'a 24-hour mean of more than this is clearly high', EARLY),
  earlyDayHighSystolic: mmHg(140, 'a mean by day of more than this is clearly high', EARLY),
  earlyDayHighDiastolic: mmHg(90, 'a mean by day of more than this is clearly high', EARLY),
  earlyNightHighSystolic: mmHg(125, 'a mean by night of more than this is clearly high', EARLY),
  earlyNightHighDiastolic: mmHg(75, 'a mean by night of more than this is clearly high', EARLY),
  dayFrom: minuteOfDay(9, 'the day begins where there is no diary', book('7', 'memory', 'ESH 2013')),
  dayTo: minuteOfDay(21, 'the day ends where there is no diary', book('7', 'memory', 'ESH 2013')),
  nightFrom: minuteOfDay(1, 'the night begins where there is no diary', book('7', 'memory', 'ESH 2013')),
  nightTo: minuteOfDay(6, 'the night ends where there is no diary', book('7', 'memory', 'ESH 2013')),
  researchDayFrom: minuteOfDay(10, 'the day begins where there is no diary', IDACO_CLOCK),
  researchDayTo: minuteOfDay(20, 'the day ends where there is no diary', IDACO_CLOCK),
  researchNightFrom: minuteOfDay(0, 'the night begins where there is no diary', IDACO_CLOCK),
  researchNightTo: minuteOfDay(6, 'the night ends where there is no diary', IDACO_CLOCK),
  wideDayFrom: minuteOfDay(8, 'the day begins where there is no diary', CANADA),
  wideDayTo: minuteOfDay(22, 'the day ends where there is no diary', CANADA),

  rangeALeastSystolic: mmHg(70, KEPT, RANGE_A),
  rangeAMostSystolic: mmHg(260, KEPT, RANGE_A),
  rangeALeastDiastolic: mmHg(40, KEPT, RANGE_A),
  rangeAMostDiastolic: mmHg(150, KEPT, RANGE_A),
  rangeALeastPulsePressure: mmHg(20, KEPT, RANGE_A),
  rangeAMostPulsePressure: mmHg(150, KEPT, RANGE_A),
  rangeALeastPulse: pulse(20, KEPT, RANGE_A),
  rangeAMostPulse: pulse(200, KEPT, RANGE_A),
  rangeBLeastSystolic: mmHg(50, KEPT, RANGE_B),
  rangeBMostSystolic: mmHg(240, KEPT, RANGE_B),
  rangeBLeastDiastolic: mmHg(40, KEPT, RANGE_B),
  rangeBMostDiastolic: mmHg(140, KEPT, RANGE_B),
  rangeBLeastPulse: pulse(40, KEPT, RANGE_B),
  rangeBMostPulse: pulse(150, KEPT, RANGE_B),
  rangeBPulsePressureShare: plain(0.25, 'of systolic', 'least pulse pressure that is kept', RANGE_B),
  ratioLeastSystolic: mmHg(70, KEPT, RATIO),
  ratioMostSystolic: mmHg(250, KEPT, RATIO),
  ratioLeastDiastolic: mmHg(40, KEPT, RATIO),
  ratioMostDiastolic: mmHg(150, KEPT, RATIO),
  ratioLeastBase: plain(1.065, 'ratio', 'systolic over diastolic must be more, with the next', RATIO),
  ratioLeastPerMmHg: plain(0.00125, 'ratio per mmHg of diastolic', 'is added to the least ratio', RATIO),
  ratioMost: plain(3, 'ratio', 'systolic over diastolic must be less', RATIO),

  extremeDipRatio: plain(0.8, 'night / day', 'extreme fall by night', DIP),
  dipperRatio: plain(0.9, 'night / day', 'usual fall by night', DIP),
  nonDipperRatio: plain(1, 'night / day', 'small fall by night; over it the pressure rises', DIP),
  dipClassChangesPercent: plain(
    32,
    '%',
    'people whose class is another in a second recording',
    book('9', 'found', 'meta-analysis 2020, PMC7575032'),
  ),
  surgeHours: plain(
    2,
    'h',
    'after and before waking, and before bed, for the rises',
    book('10', 'memory', 'Kario 2003'),
  ),
  risingLyingMinutes: plain(
    30,
    'minutes',
    'most time from the last reading lying to waking, and from waking to the first one up, for the rise on getting up',
    book('10', 'memory'),
  ),
  movingTroughHours: plain(
    1,
    'h',
    'length of the stretch of sleep with the lowest mean',
    book('10', 'memory'),
  ),
  movingTroughReadings: readings(2, 'fewest readings in that hour: one alone is no mean', OWN('10')),
  surgeReadingsAfterWaking: readings(
    4,
    'first readings after waking whose mean stands against the three lowest asleep',
    book('10', 'found', 'Almas 2016'),
  ),
  surgeReadingsWithin: plain(
    4,
    'h',
    'the first four readings after waking are of the morning within so long of it: later ones are of the day',
    OWN('10'),
  ),
  surgeTroughReadings: readings(
    2,
    'fewest readings about the lowest asleep: one alone is no mean',
    OWN('10'),
  ),
  surgeLowestAsleep: readings(
    3,
    'lowest readings asleep whose mean stands against the first four after waking',
    book('10', 'found', 'Almas 2016'),
  ),
  surgeRateReadings: readings(
    3,
    'fewest readings from the trough to the morning for a rate of the rise',
    OWN('10'),
  ),
  surgeRepeatSd: plain(
    8,
    'mmHg',
    'SD of a morning rise from one recording of a person to the next',
    book('10', 'found', 'review of surge definitions'),
  ),
  surgeMethodsApart: plain(
    10,
    'mmHg',
    'definitions of the morning rise differ by more than this',
    book('10', 'found', 'review of surge definitions'),
  ),
  variabilityLeastPeople: plain(
    3,
    'people',
    'fewest in a group by which variability is told apart from the mean: two are always on one curve',
    OWN('12'),
  ),
  variabilityMornings: days(
    3,
    'fewest days with two readings in the morning for how systolic varies from day to day at home',
    book('12', 'found', 'Finn-Home variability schedule'),
  ),
  variabilityMorningReadings: readings(
    2,
    'readings in a morning that counts for how systolic varies from day to day at home',
    book('12', 'found', 'Finn-Home variability schedule'),
  ),
  longestStepHours: plain(2, 'h', 'steps over a longer gap may be left out of variability', OWN('12')),
  cosinorLeastReadings: readings(12, 'fewest readings for a fitted curve', OWN('15')),
  cosinorLongestGapHours: plain(4, 'h', 'no curve is fitted over a longer gap', OWN('15')),
  cosinorLeastHours: plain(
    20,
    'h',
    'least time covered for a fitted curve, and for a mean closed to 24 h',
    OWN('13, 15'),
  ),
  stiffnessLeastReadings: readings(20, 'fewest readings for a stiffness index', OWN('14')),
  stiffnessLeastR2: plain(0.36, 'r squared', 'no stiffness index under it', book('14', 'memory')),
  hourlySdReadings: readings(3, 'fewest readings in an hour for its SD', OWN('13')),
  usedHours: plain(24, 'h', 'of a longer recording the first are used', OWN('20')),
  continuesWithinDays: days(
    2,
    'days without a reading after which new readings still go on with the ones before; more of them part two series',
    OWN('3'),
  ),
  officeWithinDays: days(
    92,
    'an office pressure further from a series than this does not belong to it',
    OWN('16'),
  ),
  niceTargetSystolic: mmHg(135, 'under treatment a mean at home or by day is to be under this', NICE_TARGET),
  niceTargetDiastolic: mmHg(85, 'under treatment a mean at home or by day is to be under this', NICE_TARGET),
  niceOlderFromYears: plain(80, 'years', 'from this age on another target of treatment', NICE_TARGET),
  niceOlderTargetSystolic: mmHg(
    145,
    'under treatment from 80 years on, a mean at home or by day',
    NICE_TARGET,
  ),
  niceOlderTargetDiastolic: mmHg(
    85,
    'under treatment from 80 years on, a mean at home or by day',
    NICE_TARGET,
  ),
  whiteCoatSystolic: mmHg(20, 'an office mean over the day by more than this', book('16', 'memory', 'NICE')),
  whiteCoatDiastolic: mmHg(10, 'an office mean over the day by more than this', book('16', 'memory', 'NICE')),

  outOfLineShare: plain(
    0.6,
    'share',
    'a typed number under this share of what the others of its kind usually are, or over them by the same, is asked about',
    COMMON,
  ),
  outOfLineLeastOthers: plain(
    2,
    'numbers',
    'fewest others of its kind before a typed number is asked about',
    COMMON,
  ),
  loneSystolic: mmHg(40, 'a systolic this far or further from both its neighbours stands alone', DECIDED),
  loneDiastolic: mmHg(30, 'a diastolic this far or further from both its neighbours stands alone', DECIDED),
  loneNeighbourMinutes: plain(
    90,
    'min',
    'a reading at most so long before or after another is its neighbour',
    DECIDED,
  ),
  loneNamed: readings(
    3,
    'readings that stand alone, at most, for each to be named with the mean without them',
    DECIDED,
  ),
  homeYearApartSd: mmHg(
    7.7,
    'SD of the difference of two systolic means at home of one person, a year apart',
    book('17.1', 'found', 'Asayama 2022'),
  ),
  awakeMonthApartLow: mmHg(
    -16.7,
    '95 of 100 differences of two awake systolic means of one person within a month are over this',
    book('17.1', 'found', 'meta-analysis 2020'),
  ),
  awakeMonthApartHigh: mmHg(
    18.4,
    '95 of 100 differences of two awake systolic means of one person within a month are under this',
    book('17.1', 'found', 'meta-analysis 2020'),
  ),

  intakeLeastSystolic: mmHg(
    30,
    'a systolic under this is no pressure in mmHg: with decimals it may be one in kPa, which is asked',
    OWN('20'),
  ),
  intakeLeastDiastolic: mmHg(10, 'a diastolic under this in a file is refused', OWN('20')),
  intakeMostMmHg: mmHg(300, 'a pressure over this in a file is refused: top of the scale', OWN('20')),
  intakeLeastPulse: pulse(20, 'a pulse under this in a file is refused', OWN('20')),
  intakeMostPulse: pulse(300, 'a pulse over this in a file is refused', OWN('20')),
});

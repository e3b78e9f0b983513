/**
 * The validation table of the model book (physiology handbook, section 18): what the simulated person gives over
 * thousands of runs beside what was published, each row with its tolerance.
 *
 *   node packages/physiology/prove/person.mjs [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines, table }.
 */

import { liftOf, wallOf } from '../dist/cuff/oscillation.js';
import {
  BLANK,
  beats,
  breaths,
  contourOf,
  cuffOf,
  letDown,
  makePerson,
  newLetDownResult,
  normalOf,
  PROPER,
  SCENARIOS,
  SOUND_INSTRUMENT,
  SoundLog,
  scenarioOf,
  simulate,
  truth,
  uniform,
} from '../dist/index.js';

const SEED = Number(process.argv[2] ?? 20260101);
const N = 2000;
const lines = [];
const table = [];
let passed = 0;
let failed = 0;

/** Where each row of the table has its target from, as the book cites it (physiology handbook 18). */
const SOURCE = {
  1: 'geometry of section 9',
  2: 'geometry of section 9',
  3: 'Kallioinen 2017, from memory',
  4: 'direction: Zheng 2011',
  5: 'Murray 2019',
  6: 'Picone 2017',
  7: 'Picone 2017',
  8: 'J Hypertens 2011;29:51',
  9: 'Song 2014',
  10: 'Cavallini 1996',
  11: 'clinical-skills table',
  12: 'computed in the book',
  13: 'computed in the book',
  14: 'EPIC-Potsdam 2000',
  15: 'NHANES cohort of 53,737',
  16: 'NHANES cohort of 53,737',
  17: 'Sala 2006',
  18: 'Sala 2006',
  19: 'Mancia 1985, 1987',
  20: 'Mancia 1985',
  21: 'Mancia 1987',
  22: 'Mukadam 2023',
  23: 'Olbers 2018',
  24: 'Methods Inf Med 2010',
  25: 'Hennig 2006',
  26: 'abstract on RR in fibrillation',
  27: 'echo study of 21 patients',
  28: 'table 2.1',
  29: 'ventricular premature complexes, J Physiol',
  30: 'Liu 2014',
  31: 'Tobin 1988',
  32: 'Hall 1996',
  33: 'Liu 2024',
  34: 'Ishigami 2023',
  35: 'Lancet 1996;347:139',
  36: 'Freedman 2014',
  37: 'Weber 1999',
  38: 'QKD study of 412',
  39: 'Kollár 2001',
  40: 'computed in the book',
  41: 'determinism',
};
/** What a reader of the table must know of a row: where the book contradicts itself, and in what set-up the row lands. */
const NOTE = {
  3: 'the review gives ranges over studies, from memory: any mean inside them',
  4: 'published is the direction alone; 1.4 is the book’s own, of a pressure that nothing slow moves (its section 9). With the slow courses of its section 3.1 both rates scatter more, and the ratio is smaller',
  6: 'the book itself doubts it: a catheter study has −14',
  10: 'the share is given to the model: the row shows that it comes through',
  14: 'people who sat down just before, as the book fits the study',
  15: 'after one inflation to find how high to go, as the survey does it',
  16: 'the same readings',
  17: 'the fall is given to the model (13.6 mmHg on sitting down): the row shows that it comes through',
  19: 'the rise is given to the model: the row shows that it comes through. The pulse follows from the book’s 0.78 of the rise of the mean pressure',
  28: 'the targets up to 74 years are from the memory of the book, those from 80 on, of athletes and of failing hearts its own choice',
  33: 'a column of blood adds the same to both numbers: 5.1 cm are what the study’s lap (3.9 and 4.0) comes to, 7.0 its hanging arm (6.5 and 4.4). The book says 8 cm, which is 6.2 on both numbers, and 1.8 from the study’s diastolic',
  'section 5':
    'the book’s breaths know nothing of each other; those of its own model are alike (0.3), which widens a long window by up to 1.36. Its two pulses jump by 4 % from beat to beat, each beat for itself, at exactly 72 and 108: with a rhythm of that kind the simulator lands (tolerance ours, 10 %). No heart beats so: with the breath, slow waves and drift of a real one (table 2.1) a minute wanders more than its window errs, and what the simulator gives is held against what follows from those parts (12 %)',
  'section 8.5':
    'tolerances of 8 and 5 points: the book has 5 in row 13 alone. Its 93 % over palpated + 10 are those of a pressure that stands still; with the wandering of its own section 3.1 it is about 86 %',
  'section 9': 'the book’s full reader; it allows no tolerance of its own: 0.6 and 6 % of the rate are ours',
};
/** Rows named already. */
const named = new Set();

/** Rows whose target is a number of the model itself: they prove that it comes through to the reading, and nothing else. */
const OWN_INPUT = new Set(['10', '17', '19', '21', '35']);

/** One number of the table: what it is, what came, what was wanted. All are counted. */
function check(row, isRight, what, got, wanted) {
  if (isRight) passed++;
  else failed++;
  const isFirst = !named.has(row);
  named.add(row);
  const source = isFirst ? SOURCE[row] : undefined;
  const from = source === undefined ? '' : ` [${source}]`;
  lines.push(`${isRight ? 'ok' : 'FAILED'}: ${row}: ${what} ${got}, wanted ${wanted}${from}`);
  table.push({
    row,
    what,
    got,
    wanted,
    isRight,
    source: SOURCE[row] ?? null,
    note: isFirst ? noteOf(row) : null,
  });
}
const noteOf = (row) =>
  NOTE[row] ??
  (OWN_INPUT.has(row) ? 'the model is given this number: the row shows that it comes through' : null);
const shown = (x) => String(Number(x.toFixed(2)));
const inUnit = (text, unit) => (unit === '' ? text : `${text} ${unit}`);
/** A number beside its target and what is allowed. */
function near(row, what, got, target, allowed, unit = 'mmHg') {
  const wanted = inUnit(`${shown(target)} ± ${shown(allowed)}`, unit);
  check(row, Math.abs(got - target) <= allowed, what, inUnit(got.toFixed(2), unit), wanted);
}
function inside(row, what, got, low, high, unit = 'mmHg') {
  const wanted = inUnit(`${shown(low)} to ${shown(high)}`, unit);
  check(row, got >= low && got <= high, what, inUnit(got.toFixed(2), unit), wanted);
}
const mean = (all) => all.reduce((sum, x) => sum + x, 0) / all.length;
const sd = (all) => {
  const m = mean(all);
  return Math.sqrt(all.reduce((sum, x) => sum + (x - m) ** 2, 0) / (all.length - 1));
};
const share = (all) => all.filter(Boolean).length / all.length;
const chance = (i, lane) => uniform(SEED, 'noise', i, lane);
const pick = (i, lane, low, high) => low + (high - low) * chance(i, lane);
const many = (n, make) => Array.from({ length: n }, (_, i) => make(i));

const QUIET_ALERT = { ...BLANK.alerting };
const scenario = (some = {}) => ({ ...BLANK, alerting: QUIET_ALERT, ...some });
const rhythm = (some) => ({ ...BLANK.rhythm, ...some });
/** Nothing varies: for the pure geometry. */
const still = (person) => ({
  ...person,
  breathingSwingMmHg: 0,
  slowWaveMmHg: 0,
  slowSdMmHg: 0,
  beatSdMmHg: 0,
  beatDiastolicSdMmHg: 0,
  soundSdDb: 0,
});
const plan = (some = {}) => ({ startSeconds: 3, peakMmHg: 160, fall: 2.5, thresholdDb: 0, ...some });
const run = (person, p, circumstances = PROPER, instrument = SOUND_INSTRUMENT) =>
  letDown(person, circumstances, instrument, p, newLetDownResult());
/** A reader who hears all and looks 0.20 (0.05) s later: adds what the cuff has fallen by then. */
const late = (i, lane, rate) => rate * (0.2 + 0.05 * normalOf(SEED, i, lane));

// 1, 2: the exact expectation -F/2 and its SD.
for (const [row, rate, perMinute, bias, spread, allowed] of [
  ['1', 3, 60, -1.5, 0.87, 0.1],
  ['2', 10, 40, -7.5, 4.33, 0.3],
]) {
  const found = many(N * 3, (i) => {
    const person = still(
      makePerson(scenario({ rhythm: rhythm({ ratePerMinute: perMinute, variation: 'none' }) }), i),
    );
    const out = run(person, plan({ fall: rate }));
    // The geometry knows no rise of the pulse: its instant is the top of the beat, at which the book's S is met.
    const top =
      contourOf('middle', 'brachial').peakSeconds * Math.sqrt(Math.min(60 / perMinute, 1.5) / 0.857);
    const beat = beats(person, PROPER, 0, 40).find((b) => b.index === out.firstBeat);
    return [
      out.firstCuffMmHg - person.rest.systolic,
      cuffOf(plan({ fall: rate }), beat.footSeconds + top) - person.rest.systolic,
    ];
  });
  const errors = found.map(([, top]) => top);
  const heard = mean(found.map(([at]) => at));
  near(row, `first sound at ${rate} mmHg/s and ${perMinute} a minute`, mean(errors), bias, allowed);
  near(row, 'its SD', sd(errors), spread, allowed);
  inside(
    row,
    'at the instant of the sound, which is earlier the lower the cuff',
    heard,
    mean(errors),
    mean(errors) + rate * 0.1,
  );
}

/** Errors of a trained reader against the long-run truth at a rate of fall. */
function readerErrors(rate, n) {
  const systolic = [];
  const diastolic = [];
  const mmHg = [];
  for (let i = 0; i < n; i++) {
    const s = scenario({
      systolic: pick(i, 1, 105, 160),
      diastolic: 0,
      // The four rates of the book's own table (section 9).
      rhythm: rhythm({ ratePerMinute: [45, 60, 75, 100][i % 4], variation: '45-54' }),
    });
    const person = makePerson({ ...s, diastolic: s.systolic - pick(i, 2, 35, 60) }, i + 1);
    const peakMmHg = s.systolic + 30;
    const out = run(person, plan({ fall: rate, peakMmHg, thresholdDb: 3 }));
    const { longRun, arterial } = truth(person, PROPER, (out.firstSeconds + out.lastSeconds) / 2);
    systolic.push(out.firstCuffMmHg - late(i, 5, rate) - longRun.systolic);
    diastolic.push(out.lastCuffMmHg - late(i, 6, rate) - longRun.diastolic);
    mmHg.push([out.firstCuffMmHg - arterial.systolic, out.lastCuffMmHg - arterial.diastolic]);
  }
  return { systolic, diastolic, mmHg };
}

{
  const errors = [5, 8, 10].map((rate) => readerErrors(rate, N));
  for (const [k, { systolic, diastolic }] of errors.entries()) {
    inside('3', `systolic at ${[5, 8, 10][k]} mmHg/s`, mean(systolic), -9, -2.6);
    inside('3', `diastolic at ${[5, 8, 10][k]} mmHg/s`, mean(diastolic), 0.5, 6.3);
  }
  const usual = readerErrors(2.5, N);
  inside('5', 'bias of a trained reader, systolic', mean(usual.systolic), -2, 2);
  inside('5', 'its SD', sd(usual.systolic), 1.2, 3.7);
  inside('5', 'diastolic', mean(usual.diastolic), -2, 2);
  inside('5', 'its SD', sd(usual.diastolic), 1.2, 3.7);
  near('6', 'cuff minus artery, systolic', mean(usual.mmHg.map(([s]) => s)), -5.7, 2);
  near('7', 'cuff minus artery, diastolic', mean(usual.mmHg.map(([, d]) => d)), 5.5, 2);
}

// Zheng 2011, Ann Biomed Eng (section 9): 75 people, the fall made 2 and 7 times as fast as the 2 to 3 mmHg/s of the
// guidelines: the manual systolic and diastolic changed (p < .001), and readings of one person scattered more. No mmHg
// in the abstract: direction and p alone are held against it.
{
  const at = (i, rate) => {
    const person = makePerson(scenario({ systolic: pick(i, 1, 105, 160), diastolic: 70 }), i + 1);
    const readings = many(10, (k) =>
      run(person, plan({ startSeconds: 3 + 11 * k, peakMmHg: person.rest.systolic + 45, fall: rate })),
    );
    const of = (key) => readings.map((one) => one[key]).filter((one) => !Number.isNaN(one));
    const [first, last] = [of('firstCuffMmHg'), of('lastCuffMmHg')];
    return { systolic: mean(first), diastolic: mean(last), sd: (sd(first) + sd(last)) / 2 };
  };
  const slow = many(75, (i) => at(i, 2.5));
  for (const times of [2, 7]) {
    const fast = many(75, (i) => at(i, 2.5 * times));
    const t = (of) => {
      const apart = fast.map((one, i) => one[of] - slow[i][of]);
      return { mean: mean(apart), t: mean(apart) / (sd(apart) / Math.sqrt(75)) };
    };
    // Two-sided p < .001 at 74 degrees of freedom: |t| over 3.43.
    const [systolic, diastolic] = [t('systolic'), t('diastolic')];
    const both = [systolic, diastolic].map((one) => `${one.mean.toFixed(1)} (t ${one.t.toFixed(1)})`);
    check(
      'Zheng 2011',
      systolic.t < -3.43 && diastolic.t > 3.43,
      `${times} times as fast, 75 people: systolic and diastolic`,
      `${both.join(' and ')} mmHg`,
      'down and up, p < .001',
    );
    const [before, after] = [mean(slow.map((one) => one.sd)), mean(fast.map((one) => one.sd))];
    check(
      'Zheng 2011',
      after > before,
      'SD within a person',
      `${after.toFixed(2)} mmHg`,
      `more than ${before.toFixed(2)} (2.5 mmHg/s)`,
    );
  }
}

// Section 9, "full reader": a swing of 3 either way with the breath, 1.5 from beat to beat, nothing slow; and 4 with it.
{
  const table = (rate, perMinute) => {
    const found = many(N, (i) => {
      const person = {
        ...still(
          makePerson(scenario({ rhythm: rhythm({ ratePerMinute: perMinute, variation: 'none' }) }), i),
        ),
        breathingSwingMmHg: 6,
        beatSdMmHg: 1.5,
        beatDiastolicSdMmHg: 1,
      };
      const out = run(person, plan({ fall: rate }));
      return [out.firstCuffMmHg - late(i, 5, rate) - 120, out.lastCuffMmHg - late(i, 6, rate) - 76];
    });
    return [mean(found.map((f) => f[0])), sd(found.map((f) => f[0])), mean(found.map((f) => f[1]))];
  };
  const BOOK = [
    [1, 0.7, 1.1, 1.4, 1.7],
    [2, -0.9, -0.5, -0.1, 0.3],
    [3, -2.2, -1.6, -1.2, -0.7],
    [5, -4.2, -3.4, -2.9, -2.3],
    [8, -6.9, -5.5, -4.7, -4],
    [10, -8.8, -7.1, -5.9, -5],
  ];
  for (const [rate, ...row] of BOOK) {
    for (const [k, perMinute] of [45, 60, 75, 100].entries()) {
      const [bias] = table(rate, perMinute);
      near(
        'section 9',
        `systolic bias at ${rate} mmHg/s and ${perMinute} a minute`,
        bias,
        row[k],
        0.6 + 0.06 * rate,
      );
    }
  }
  const slow = [45, 60, 75, 100].map((perMinute) => table(2.5, perMinute)[1]);
  const fast = [45, 60, 75, 100].map((perMinute) => table(8, perMinute)[1]);
  const ratio = mean(fast) / mean(slow);
  check(
    '4',
    ratio >= 1.4,
    'SD at 8 mmHg/s beside 2.5, nothing slow in the pressure',
    `${ratio.toFixed(2)} times`,
    '1.4 times or more',
  );
  const whole = [8, 2.5].map((rate) => sd(readerErrors(rate, N).systolic));
  const wandering = whole[0] / whole[1];
  check(
    '4',
    wandering > 1,
    'the same with the slow courses of section 3.1',
    `${wandering.toFixed(2)} times`,
    'over 1 (the published direction)',
  );
}

// 8
{
  const off = many(N, (i) => {
    const out = run(makePerson(scenario({ rhythm: rhythm({ ratePerMinute: 72 }) }), i), plan());
    return out.pulseCuffMmHg - out.firstCuffMmHg;
  });
  near('8', `palpated minus auscultated (SD ${sd(off).toFixed(1)})`, mean(off), -5.2, 1);
}

// 9
{
  const systolic = [];
  const diastolic = [];
  for (let i = 0; i < N; i++) {
    const person = makePerson(scenario({ systolic: 136, diastolic: 84 }), i);
    const well = run(person, plan({ peakMmHg: 170 }));
    const hard = run(person, plan({ peakMmHg: 170, thresholdDb: 25 }));
    systolic.push(hard.firstCuffMmHg - well.firstCuffMmHg);
    diastolic.push(hard.lastCuffMmHg - well.lastCuffMmHg);
  }
  near('9', 'a loss of 25 dB, systolic', mean(systolic), -1.55, 1);
  near('9', 'diastolic', mean(diastolic), 4.32, 1.5);
}

// 10 to 13
{
  const older = (i, some = {}) =>
    makePerson(
      scenario({
        ageYears: 64,
        systolic: 178 + 14 * normalOf(SEED, i, 7),
        diastolic: 96,
        gapChance: 0.21,
        rhythm: rhythm({ variation: '55-64' }),
        ...some,
      }),
      i,
    );
  const all = many(N * 2, (i) => older(i));
  near(
    '10',
    'with a gap, of older people with hypertension',
    100 * share(all.map(({ gap }) => gap !== null)),
    21,
    4,
    '%',
  );
  const gaps = many(N, (i) => older(i, { gapChance: 1 })).filter(({ gap }) => gap !== null);
  const widest = Math.max(...gaps.map(({ gap }) => gap.topMmHg - gap.bottomMmHg));
  check('11', widest <= 40, `widest of ${gaps.length} gaps`, `${widest.toFixed(2)} mmHg`, '40 or less');
  const missed = gaps.map((person) => {
    const felt = run(person, plan({ peakMmHg: person.rest.systolic + 40 })).pulseCuffMmHg;
    const out = run(person, plan({ peakMmHg: felt + 30 }));
    return out.firstCuffMmHg < person.gap.bottomMmHg + 4;
  });
  check(
    '12',
    share(missed) < 0.005,
    'missed after pumping to palpated + 30',
    `${(100 * share(missed)).toFixed(2)} %`,
    'under 0.5 %',
  );
  const silent = gaps.map((person) => {
    const out = run(person, plan({ peakMmHg: 160 }));
    return (
      person.rest.systolic > 160 &&
      // More than one beat of 2.1 mmHg in silence; sounds at once are noticed.
      160 - out.firstCuffMmHg > 2.1 &&
      out.firstCuffMmHg < person.gap.bottomMmHg + 6
    );
  });
  near('13', 'silent misses when pumped to 160', 100 * share(silent), 43, 5, '%');
  // Section 8.5, the whole table: over the systolic, sounds at once, silent inside the gap (percent of people with a gap).
  const table = (peakOf) => {
    const kinds = gaps.map((person) => {
      const peakMmHg = peakOf(person);
      if (person.rest.systolic <= peakMmHg) return 'above';
      const out = run(person, plan({ peakMmHg }));
      const isSilent = peakMmHg - out.firstCuffMmHg > 2.1 && out.firstCuffMmHg < person.gap.bottomMmHg + 6;
      return isSilent ? 'silent' : 'at once';
    });
    return (kind) => 100 * share(kinds.map((one) => one === kind));
  };
  const felt = new Map(
    gaps.map((person) => [person, run(person, plan({ peakMmHg: person.rest.systolic + 40 })).pulseCuffMmHg]),
  );
  // Pumped to 10 over where the pulse came back. The book's 93 is that of a pressure that stands still (section 8.5, computed): what a
  // finger misses is 5.2 (SD 2.5), and the fall to the next beat adds half of 2.5 mmHg/s x 0.857 s = 1.07 (SD 0.62); 10 - 6.27 = 3.73 over
  // an SD of 2.58 is 1.45, of which 92.6 % lie under. With what the book's section 3.1 has a pressure wander from minute to minute (row
  // 22) that SD becomes 4.5, and the share of those over their long-run systolic 85.7: the handbook's 93 does not follow from the whole of it.
  const feltOver = (change) =>
    share(
      gaps.map((made) => {
        const person = { ...made, ...change };
        const top = run(person, plan({ peakMmHg: person.rest.systolic + 40 })).pulseCuffMmHg;
        return top + 10 >= person.rest.systolic;
      }),
    );
  const standing = { slowSdMmHg: 0, slowWaveMmHg: 0, beatSdMmHg: 0, breathingSwingMmHg: 0 };
  near(
    'section 8.5',
    'pumped to palpated + 10, a pressure that stands still',
    100 * feltOver(standing),
    93,
    3,
    '%',
  );
  for (const [name, peakOf, above, atOnce, isSilent] of [
    ['150', () => 150, 2, 47, 50],
    ['160', () => 160, 10, 47, 43],
    ['170', () => 170, 28, 46, 26],
    ['180', () => 180, 56, 34, 11],
    ['200', () => 200, 94, 5, 0.6],
    ['palpated + 10', (person) => felt.get(person) + 10, 93, 7, 0],
    ['palpated + 20', (person) => felt.get(person) + 20, 100, 0, 0],
    ['palpated + 30', (person) => felt.get(person) + 30, 100, 0, 0],
  ]) {
    const found = table(peakOf);
    near('section 8.5', `pumped to ${name}: over the systolic`, found('above'), above, 8, '%');
    near('section 8.5', 'sounds at once', found('at once'), atOnce, 8, '%');
    near('section 8.5', 'silent inside the gap', found('silent'), isSilent, 5, '%');
  }
}

// 14 to 16: three readings two minutes, then one minute, apart.
{
  const alerting = { ...QUIET_ALERT, firstReadingMmHg: 5.5, sittingMmHg: 1.5 };
  const falls = [[], []];
  for (let i = 0; i < N; i++) {
    const person = makePerson(scenario({ alerting }), i);
    const first = 3 - 8;
    const at = [0, 120, 240].map((later) =>
      run(person, plan({ startSeconds: 3 + later }), {
        ...PROPER,
        restMinutes: 0,
        firstInflationSeconds: first,
      }),
    );
    falls[0].push(at[0].firstCuffMmHg - at[1].firstCuffMmHg);
    falls[1].push(at[1].firstCuffMmHg - at[2].firstCuffMmHg);
  }
  near('14', 'fall from the first to the second reading', mean(falls[0]), 5, 1);
  near('14', 'from the second to the third', mean(falls[1]), 0.9, 0.5);
  const threes = many(N, (i) => {
    const person = makePerson(
      scenario({
        systolic: 124,
        diastolic: 72,
        alerting: { ...QUIET_ALERT, firstReadingMmHg: null, sittingMmHg: null },
      }),
      i,
    );
    return [0, 60, 120].map((later, k) => {
      const out = run(
        person,
        plan({ startSeconds: 3 + later }), // The survey pumps up once before, to find how far to go.
        { ...PROPER, firstInflationSeconds: -90 },
      );
      return 2 * Math.round((out.firstCuffMmHg - late(i, 10 + k, 2.5)) / 2);
    });
  });
  near('15', 'three readings that fall', 100 * share(threes.map(([a, b, c]) => a > b && b > c)), 17, 4, '%');
  near('15', 'that rise', 100 * share(threes.map(([a, b, c]) => a < b && b < c)), 7.4, 4, '%');
  near(
    '16',
    'range of three over 10',
    100 * share(threes.map((t) => Math.max(...t) - Math.min(...t) > 10)),
    12.9,
    5,
    '%',
  );
}

// 17 to 21, from the levels: the means of beats about an instant.
{
  const level = (person, circumstances, seconds) => {
    const found = beats(person, circumstances, seconds - 5, seconds + 5);
    return {
      systolic: mean(found.map((b) => b.systolic)),
      diastolic: mean(found.map((b) => b.diastolic)),
      rate: 60 / mean(found.map((b) => b.rrSeconds)),
    };
  };
  const sitting = many(300, (i) => {
    const person = still(
      makePerson(
        scenario({ systolic: 150, diastolic: 95, alerting: { ...QUIET_ALERT, sittingMmHg: 13.6 } }),
        i,
      ),
    );
    const circumstances = { ...PROPER, restMinutes: 0 };
    const at = (minutes) => level(person, circumstances, 60 * minutes + 5.5);
    const [a, b, c] = [at(0), at(5.8), at(16)];
    return [
      a.systolic - c.systolic,
      a.diastolic - c.diastolic,
      (5.8 * Math.LN2) / Math.log((a.systolic - 150) / (b.systolic - 150)),
    ];
  });
  near('17', 'fall in 16 minutes of sitting, systolic', mean(sitting.map((x) => x[0])), 11.6, 2);
  near('17', 'diastolic', mean(sitting.map((x) => x[1])), 4.3, 1);
  near('18', 'its half-time', mean(sitting.map((x) => x[2])), 5.8, 0.5, 'min');
  const coat = (by, minutes) => {
    const person = (i) => still(makePerson(scenario({ alerting: { ...QUIET_ALERT, whiteCoatMmHg: 22 } }), i));
    const circumstances = { ...PROPER, measuredBy: by, observerMinutes: 0 };
    return many(100, (i) => level(person(i), circumstances, 60 * minutes));
  };
  const peak = coat('doctor', 2.5);
  near('19', 'a doctor’s visit, systolic', mean(peak.map((x) => x.systolic)) - 120, 22, 4);
  near('19', 'its pulse', mean(peak.map((x) => x.rate)) - 70, 17.7, 4, '/min');
  inside(
    '20',
    'left at the tenth minute',
    (100 * (mean(coat('doctor', 10).map((x) => x.systolic)) - 120)) /
      (mean(peak.map((x) => x.systolic)) - 120),
    15,
    28,
    '%',
  );
  near(
    '21',
    'a nurse instead',
    100 *
      ((mean(coat('nurse', 2.5).map((x) => x.systolic)) - 120) / (mean(peak.map((x) => x.systolic)) - 120) -
        1),
    -47,
    8,
    '%',
  );
}

// 22
{
  const ranges = many(200, (i) => {
    const found = beats(makePerson(scenario({ rhythm: rhythm({ variation: '55-64' }) }), i), PROPER, 5, 605);
    const spread = (key) => Math.max(...found.map((b) => b[key])) - Math.min(...found.map((b) => b[key]));
    return [spread('arterialSystolic'), spread('arterialDiastolic')];
  });
  near('22', 'range over ten minutes, systolic', mean(ranges.map((r) => r[0])), 21, 4);
  inside('22', 'its SD between people (9)', sd(ranges.map((r) => r[0])), 4.5, 13.5);
  near('22', 'diastolic', mean(ranges.map((r) => r[1])), 14, 3);
}

// 23 to 27
{
  const step = (all) => mean(all.slice(1).map((x, i) => Math.abs(x - all[i])));
  const people = (kind, variation) =>
    many(40, (i) =>
      beats(
        makePerson(
          scenario({
            ageYears: 60,
            rhythm: rhythm({ kind, variation, ratePerMinute: kind === 'sinus' ? 70 : 81.4 }),
          }),
          i,
        ),
        PROPER,
        5,
        605,
      ),
    );
  const sinus = people('sinus', '55-64');
  const fibrillating = people('atrial-fibrillation', 'none');
  const ratio = (key) =>
    mean(fibrillating.map((b) => step(b.map((x) => x[key])))) /
    mean(sinus.map((b) => step(b.map((x) => x[key]))));
  inside('23', 'beat-to-beat change beside sinus rhythm, systolic', ratio('systolic'), 1.6, 2.7, 'times');
  inside('23', 'diastolic', ratio('diastolic'), 5, 10, 'times');
  const rr = fibrillating.flatMap((found) => found.map((b) => b.rrSeconds));
  near('24', 'mean interval', mean(rr), 0.738, 0.02, 's');
  inside('24', 'its coefficient of variation', sd(rr) / mean(rr), 0.22 - 0.02, 0.25 + 0.02, '');
  const tail = rr.filter((x) => x > 0.9);
  inside('25', 'tail rate', 1 / (mean(tail) - 0.9), 3, 12, '/s');
  const serial = mean(
    fibrillating.map((found) => {
      const x = found.map((b) => b.rrSeconds);
      const m = mean(x);
      return mean(x.slice(1).map((v, i) => (v - m) * (x[i] - m))) / mean(x.map((v) => (v - m) ** 2));
    }),
  );
  inside('26', 'serial correlation', serial, -0.15, 0.15, '');
  const rows = fibrillating.flatMap((found) =>
    found.slice(2).map((b, i) => [b.strokeFactor, b.rrSeconds, found[i + 1].rrSeconds]),
  );
  const r = (x, y) => {
    const [mx, my] = [mean(x), mean(y)];
    return (
      mean(x.map((v, i) => (v - mx) * (y[i] - my))) /
      Math.sqrt(mean(x.map((v) => (v - mx) ** 2)) * mean(y.map((v) => (v - my) ** 2)))
    );
  };
  const [y, a, b] = [0, 1, 2].map((k) => rows.map((row) => row[k]));
  const [ya, yb, ab] = [r(y, a), r(y, b), r(a, b)];
  near('27', 'r2 of strength with the last interval', ya * ya, 0.52, 0.1, '');
  near('27', 'with the last two', (ya * ya + yb * yb - 2 * ya * yb * ab) / (1 - ab * ab), 0.72, 0.1, '');
}

// 28
for (const [variation, perMinute, sdnn, rmssd, breathing] of [
  ['25-34', 70, 50, 41, 15],
  ['35-44', 70, 45, 34, 15],
  ['45-54', 70, 37, 25, 15],
  ['55-64', 70, 32, 21, 15],
  ['65-74', 70, 29, 19, 15],
  ['80-plus', 72, 24, 15, 15],
  ['athlete', 52, 80, 75, 13.2],
  ['failure', 85, 15, 10, 19.8],
]) {
  const found = many(150, (i) => {
    const person = makePerson(
      scenario({
        rhythm: rhythm({ variation, ratePerMinute: perMinute }),
        breathing: { kind: 'rest', ratePerMinute: breathing, cycleSeconds: null },
      }),
      i,
    );
    const x = beats(person, PROPER, 5, 305).map((b) => 1000 * b.rrSeconds);
    return [sd(x), Math.sqrt(mean(x.slice(1).map((v, k) => (v - x[k]) ** 2)))];
  });
  near('28', `${variation}: SDNN`, mean(found.map((f) => f[0])), sdnn, 0.1 * sdnn, 'ms');
  near('28', `${variation}: RMSSD`, mean(found.map((f) => f[1])), rmssd, 0.1 * rmssd, 'ms');
}

// 29
for (const [isFailing, target, allowed] of [
  [false, 9.8, 4],
  [true, 48.7, 15],
]) {
  const gains = many(60, (i) => {
    const s = scenario({
      traits: { ...BLANK.traits, isFailing },
      rhythm: rhythm({ kind: 'ventricular-ectopics', ectopicsPerMinute: 4, variation: '55-64' }),
    });
    const found = beats(still(makePerson(s, i)), PROPER, 5, 305);
    return found.flatMap((b, k) =>
      k > 1 && found[k - 1].isPremature && b.rrSeconds > 1
        ? [(b.systolic - b.diastolic) / (found[k - 2].systolic - found[k - 2].diastolic) - 1]
        : [],
    );
  }).flat();
  near(
    '29',
    `pulse after the pause${isFailing ? ', failing heart' : ''}`,
    100 * mean(gains),
    target,
    allowed,
    '%',
  );
}

// 30: the swing of the needle over the pressure in the cuff, at 112/70.
{
  const cuffs = many(30_000, (i) => i / 100);
  const swings = cuffs.map((cuff) => liftOf(wallOf(false, false), 112, 70, cuff));
  const peak = Math.max(...swings);
  const widthAt = (part) => swings.filter((swing) => swing >= part * peak).length / 100;
  near('30', 'largest swing of the needle at 112/70', peak, 3, 0.8);
  near('30', 'width at half of it', widthAt(0.5), 57, 11);
  near('30', 'width at 30 % of it', widthAt(0.3), 89, 12);
}

// 31, 32
{
  const found = many(200, (i) => {
    const all = breaths(makePerson(scenario(), i), PROPER, 0, 900);
    const rate = all.map((b) => 60 / b.durationSeconds);
    const depth = all.map((b) => b.depth);
    return [sd(rate) / mean(rate), sd(depth) / mean(depth)];
  });
  near('31', 'breath to breath, rate', 100 * mean(found.map((f) => f[0])), 20.8, 4, '%');
  near('31', 'depth', 100 * mean(found.map((f) => f[1])), 33, 7, '%');
  for (const [cycleSeconds, name] of [
    [59, 'failing heart'],
    [37.3, 'idiopathic'],
  ]) {
    const lengths = many(50, (i) => {
      const all = breaths(
        makePerson(scenario({ breathing: { kind: 'cheyne-stokes', ratePerMinute: 22, cycleSeconds } }), i),
        PROPER,
        0,
        900,
      );
      const ends = all.filter((b) => b.durationSeconds > 8).map((b) => b.startSeconds);
      return (ends.at(-1) - ends[0]) / (ends.length - 1);
    });
    near('32', `cycle, ${name}`, mean(lengths), cycleSeconds, 5, 's');
  }
  const counts = many(N, (i) => {
    const from = 5 + 60 * chance(i, 20);
    return breaths(makePerson(scenarioOf('tide'), i), PROPER, from, from + 60).length;
  });
  check(
    '32',
    counts.every((n) => n >= 12 && n <= 15) && share(counts.map((n) => n === 13 || n === 14)) > 0.9,
    'breaths counted in 60 s of waxing and waning: 13 or 14',
    `${(100 * share(counts.map((n) => n === 13 || n === 14))).toFixed(1)} %`,
    'over 90 %',
  );
}

// Section 5: what the window alone does to a count begun at any moment (SD, per minute). The book's table has
// independent breaths and intervals; its model has neighbours that are alike (0.3), which widens a long window by up to
// 1.36, and a slow part of fibrillation (0.06 of 0.737 s over 14.4 s), which adds to it.
{
  const counted = (times, from, seconds) =>
    (60 / seconds) * times.filter((t) => t >= from && t < from + seconds).length;
  const spread = (timesOf, seconds) =>
    sd(
      many(400, (i) => {
        const times = timesOf(i);
        const rates = many(8, (n) => counted(times, 5 + 100 * n + 30 * chance(i * 8 + n, 30), seconds));
        // Each person's own mean is taken out: a rate that wanders over minutes is no error of the window.
        const whole = (60 * times.filter((t) => t >= 5 && t < 895).length) / 890;
        return rates.map((rate) => rate - whole);
      }).flat(),
    );
  const starts = (some) => (i) =>
    breaths(makePerson(scenario({ breathing: { ...BLANK.breathing, ...some } }), i), PROPER, 0, 900).map(
      (b) => b.startSeconds,
    );
  const fibrillating = (i) =>
    beats(
      makePerson(scenario({ rhythm: rhythm({ kind: 'atrial-fibrillation', ratePerMinute: 81.4 }) }), i),
      PROPER,
      0,
      900,
    ).map((b) => b.footSeconds);
  for (const [ratePerMinute, ...row] of [
    [12, 2.07, 1.27, 0.81],
    [16, 2.26, 1.4, 0.92],
    [24, 2.54, 1.63, 1.09],
  ]) {
    for (const [k, seconds] of [15, 30, 60].entries()) {
      inside(
        'section 5',
        `breaths ${ratePerMinute} over ${seconds} s: SD`,
        spread(starts({ ratePerMinute }), seconds),
        0.9 * row[k],
        1.36 * row[k],
        '/min',
      );
    }
  }
  for (const [seconds, alone] of [
    [15, 4.6],
    [30, 3.14],
    [60, 2.17],
  ]) {
    const part = 14.4 / seconds;
    const alike = 2 * part * (1 - part * (1 - Math.exp(-1 / part)));
    const slow = 81.4 * (0.06 / 0.737) * Math.sqrt(alike);
    const wanted = Math.hypot(alone, slow);
    near(
      'section 5',
      `fibrillation, mean 81, over ${seconds} s (${alone} without its slow part): SD`,
      spread(fibrillating, seconds),
      wanted,
      0.12 * wanted,
      '/min',
    );
  }
  const sinus = (perMinute, variation) => (i) =>
    beats(
      makePerson(scenario({ rhythm: rhythm({ ratePerMinute: perMinute(i), variation }) }), i),
      PROPER,
      0,
      900,
    ).map((b) => b.footSeconds);
  // A pulse without any variation, at 60 to 80: the window alone, whose SD is (60 / window) sqrt(1 / 6), exactly.
  for (const seconds of [15, 30, 60]) {
    const exact = 60 / seconds / Math.sqrt(6);
    const even = spread(
      sinus((i) => 60 + 20 * chance(i, 31), 'none'),
      seconds,
    );
    near('section 5', `an even pulse over ${seconds} s: SD`, even, exact, 0.08 * exact, '/min');
  }
  // The book's pulses have 4 % of jitter that knows nothing of its neighbour, at exactly 72 and 108.
  for (const [perMinute, ...row] of [
    [72, 1.41, 0.88, 0.51],
    [108, 1.61, 0.97, 0.58],
  ])
    for (const [k, seconds] of [15, 30, 60].entries())
      near(
        'section 5',
        `pulse ${perMinute}, each beat for itself, over ${seconds} s: SD`,
        spread(
          sinus(() => perMinute, 'independent'),
          seconds,
        ),
        row[k],
        0.1 * row[k],
        '/min',
      );
  // Of a heart with the waves and the drift of section 2.1 the rate of a window wanders as their means over it do. A sine of frequency f
  // leaves sinc(f W) of its height (its frequency wanders: the mean over half a turn either way); a drift by cubic splines through normal
  // numbers, s apart, is correlated with itself as the spline of degree 7 falls (Schoenberg: a cubic one with itself). And the whole beats
  // that a window holds of n and a bit have on top of it the variance of that bit, f (1 - f) on average. Amplitudes: table 2.1.
  const spline7 = (x) =>
    many(
      9,
      (k) => (-1) ** k * [1, 8, 28, 56, 70, 56, 28, 8, 1][k] * Math.max(0, Math.abs(x) + 4 - k) ** 7,
    ).reduce((sum, one) => sum + one, 0) / 5040;
  const meanOf = (from, to, of) => mean(many(200, (i) => of(from + ((to - from) * (i + 0.5)) / 200)));
  const meanOverWindow = (timeConstant, seconds) =>
    2 * meanOf(0, 1, (u) => ((1 - u) * spline7((1.19 * u * seconds) / timeConstant)) / spline7(0));
  const sinc2 = (turns) =>
    meanOf(turns - 0.5, turns + 0.5, (u) => (Math.sin(Math.PI * u) / (Math.PI * u)) ** 2);
  const expected = (perMinute, seconds) => {
    const { breathSeconds, slowSeconds, driftSeconds } = makePerson(
      scenario({ rhythm: rhythm({ ratePerMinute: perMinute, variation: '55-64' }) }),
      0,
    ).heart;
    const [constants, seen] = [
      [5, 15, 45, 135, 405],
      [0.971, 0.915, 0.759, 0.406, 0.082],
    ];
    const each = driftSeconds ** 2 / seen.reduce((sum, one) => sum + one, 0);
    const drifts = constants.map((t) => each * (meanOverWindow(t, seconds) - meanOverWindow(t, 890)));
    const waves =
      (breathSeconds ** 2 / 2) * sinc2((BLANK.breathing.ratePerMinute / 60) * seconds) +
      (slowSeconds ** 2 / 2) * sinc2(0.1 * seconds);
    const ofIntervals = waves + drifts.reduce((sum, one) => sum + one, 0);
    const ofRate = (perMinute ** 2 / 60) * Math.sqrt(ofIntervals);
    const beatsOff = (ofRate * seconds) / 60;
    const ofBit = 1 / 6 - Math.exp(-2 * (Math.PI * beatsOff) ** 2) / Math.PI ** 2;
    return Math.hypot(ofRate, (60 / seconds) * Math.sqrt(ofBit));
  };
  for (const perMinute of [72, 108])
    for (const seconds of [15, 30, 60]) {
      const wanted = expected(perMinute, seconds);
      near(
        'section 5',
        `pulse ${perMinute} of a heart of 55 to 64 years over ${seconds} s (worked out): SD`,
        spread(
          sinus(() => perMinute, '55-64'),
          seconds,
        ),
        wanted,
        0.12 * wanted,
        '/min',
      );
    }
  // A count begun on a beat: called 1 it is half a beat too many, called 0 half a beat too few.
  for (const seconds of [15, 30, 60]) {
    const over = many(400, (i) => {
      const times = sinus(() => 70 + (i % 20), '55-64')(i);
      const from = times[20 + (i % 30)];
      const whole = (60 * times.filter((t) => t >= 5 && t < 895).length) / 890;
      return counted(times, from, seconds) - whole;
    });
    near('section 5', `begun on a beat called 1, over ${seconds} s`, mean(over), 30 / seconds, 0.35, '/min');
    near('section 5', 'called 0', mean(over) - 60 / seconds, -30 / seconds, 0.35, '/min');
  }
  const tide = starts({ kind: 'cheyne-stokes', ratePerMinute: 22, cycleSeconds: 59 });
  near('section 5', 'waxing and waning over 30 s: SD', spread(tide, 30), 5.8, 0.6, '/min');
  near('section 5', 'over 60 s: SD', spread(tide, 60), 0.42, 0.1, '/min');
}

// 33, 34, 37: differences of readings of the same person at the same seed.
{
  const difference = (circumstances, instrument = {}, some = {}) => {
    const found = many(N, (i) => {
      const person = makePerson(scenario({ ...some }), i);
      const p = plan({ peakMmHg: person.rest.systolic + 45, thresholdDb: 5 });
      const right = run(person, p, PROPER, { ...SOUND_INSTRUMENT, bladder: instrument.right ?? 'adult' });
      const wrong = run(
        person,
        p,
        { ...PROPER, ...circumstances },
        { ...SOUND_INSTRUMENT, bladder: instrument.wrong ?? 'adult' },
      );
      return [wrong.firstCuffMmHg - right.firstCuffMmHg, wrong.lastCuffMmHg - right.lastCuffMmHg];
    });
    return [mean(found.map((f) => f[0])), mean(found.map((f) => f[1]))];
  };
  const lap = difference({ armBelowHeartCm: 5 });
  near('33', 'hand in the lap (5 cm), systolic', lap[0], 3.9, 1.5);
  near('33', 'diastolic', lap[1], 4, 1.5);
  const side = difference({ armBelowHeartCm: 7 });
  near('33', 'arm at the side (7 cm), systolic', side[0], 6.5, 1.5);
  near('33', 'diastolic', side[1], 4.4, 1.5);
  // The handbook's 8 cm go by the systolic alone (6.5 / 0.776); then its diastolic is missed by 1.8, and its "muscle effort" of section 12
  // (+1.5/+2.5, said to be what is left) makes that worse. By both numbers of the study the arm hung 5.45 / 0.776 = 7.0 cm low.
  near(
    '34',
    'cuff one size too large',
    difference({}, { right: 'small-adult', wrong: 'adult' }, { armCm: 24.4 })[0],
    -3.6,
    1,
  );
  near(
    '34',
    'one size too small',
    difference({}, { right: 'large-adult', wrong: 'adult' }, { armCm: 30.5 * 1.25 })[0],
    4.8,
    1,
  );
  near(
    '34',
    'two sizes too small',
    difference({}, { right: 'thigh', wrong: 'adult' }, { armCm: 30.5 * 1.25 ** 2 })[0],
    19.5,
    3,
  );
  const over = difference({ chestPiece: 'under-cuff' });
  near('37', 'listening under the cuff, diastolic, normotensive', over[1], -10.6, 3);
  near(
    '37',
    'hypertensive',
    difference({ chestPiece: 'under-cuff' }, {}, { systolic: 160, diastolic: 98 })[1],
    -8.4,
    3,
  );
}

// 35, 36
{
  const audible = (some) =>
    100 * share(many(N, (i) => makePerson(scenario(some), i).muffledAboveMmHg !== null));
  near(
    '35',
    'muffling audible in pregnancy',
    audible({ traits: { ...BLANK.traits, isPregnant: true } }),
    52,
    5,
    '%',
  );
  near('35', 'in other women', audible({}), 32, 5, '%');
  const children = many(
    N,
    (i) => makePerson(scenario({ ageYears: 11, systolic: 108, diastolic: 49 }), i).muffledAboveMmHg,
  ).filter((x) => x !== null);
  near('36', 'muffling over the last sound in children', mean(children), 13, 3);
}

// 38
{
  const delays = many(N, (i) => {
    const person = makePerson(
      scenario({ systolic: 100, diastolic: 64, rhythm: rhythm({ ratePerMinute: 60 }) }),
      i,
    );
    const sounds = new SoundLog();
    letDown(person, PROPER, SOUND_INSTRUMENT, plan({ peakMmHg: 130 }), newLetDownResult(), sounds);
    const last = sounds.count - 1;
    const beat = beats(person, PROPER, 0, 40).find((b) => b.index === sounds.beat[last]);
    return 1000 * (sounds.atSeconds[last] - beat.rSeconds);
  });
  near('38', `electrical beat to the last sound (SD ${sd(delays).toFixed(0)})`, mean(delays), 202, 10, 'ms');
}

// 39: the centres that the synthesiser is given.
{
  const sounds = SCENARIOS.flatMap(
    (s) =>
      simulate(
        makePerson(s, 3),
        PROPER,
        SOUND_INSTRUMENT,
        [
          { tick: 200, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: s.systolic + 30 },
          { tick: 2000, kind: 'steady-fall', mmHgPerSecond: 3, toMmHg: 0 },
        ],
        70,
      ).sounds,
  ).filter(({ phase, isPistolShot }) => phase === 1 && !isPistolShot);
  inside('39', `centre of the taps (${sounds.length})`, mean(sounds.map((x) => x.centreHz)), 90, 170, 'Hz');
}

// 40: first where taps come while breathing out alone, then where every beat taps.
{
  const found = many(N, (i) => {
    const s = scenario({
      breathingSwingMmHg: 18,
      rhythm: rhythm({ ratePerMinute: 110, variation: 'none' }),
      breathing: { kind: 'fast', ratePerMinute: 24, cycleSeconds: null },
    });
    const person = { ...makePerson(s, i), slowWaveMmHg: 0, slowSdMmHg: 0 };
    const sounds = new SoundLog();
    letDown(person, PROPER, SOUND_INSTRUMENT, plan({ fall: 2, peakMmHg: 140 }), newLetDownResult(), sounds);
    let all = sounds.count - 1;
    while (all > 0 && sounds.cuffMmHg[all] < person.rest.diastolic + 12) all--;
    while (all > 0 && sounds.beat[all] - sounds.beat[all - 1] === 1) all--;
    return sounds.cuffMmHg[0] - sounds.cuffMmHg[all];
  });
  near('40', `a paradox of 18 read at 2 mmHg/s (SD ${sd(found).toFixed(1)})`, mean(found), 12, 2);
}

// 41
{
  const once = () => {
    const actions = [
      ...many(8, (k) => ({ tick: 200 + 100 * k, kind: 'squeeze', share: 0.9 })),
      { tick: 1200, kind: 'valve', degrees: 40 },
      { tick: 5000, kind: 'valve', degrees: 60 },
      { tick: 9000, kind: 'quick-release' },
    ];
    return JSON.stringify(
      SCENARIOS.map((s) => simulate(makePerson(s, 9), PROPER, SOUND_INSTRUMENT, actions, 50)),
      (_, v) => (v instanceof Float64Array ? [...v] : v),
    );
  };
  const [first, again] = [once(), once()];
  check(
    '41',
    first === again,
    'the same seed and actions',
    first === again ? 'the same visit' : 'another',
    'the same visit, to the last bit',
  );
}

console.log(
  JSON.stringify({ name: 'The simulated person against the model book', passed, failed, lines, table }),
);

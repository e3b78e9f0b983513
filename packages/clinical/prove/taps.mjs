/**
 * The heavy loops of the taps: what their numbers are worth over many simulated people and tappers.
 *
 *   node packages/clinical/prove/taps.mjs [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import { tapResult } from '../dist/index.js';
import { generator, independentIntervals, RHYTHMS, slowIntervals, tapped } from '../fixtures/people.mjs';

const SEED = Number(process.argv[2] ?? 20260101);
const DRAWS = 10_000;

const lines = [];
let passed = 0;
let failed = 0;

function check(isRight, line) {
  if (isRight) passed++;
  else failed++;
  lines.push(`${isRight ? 'ok' : 'FAILED'}: ${line}`);
}

const percent = (part, whole) => `${((100 * part) / whole).toFixed(1)} %`;

function resultOf(seconds, repair = true) {
  return tapResult({ of: 'pulse', source: 'key', seconds }, { repair });
}

/** A person, a tapper and a number of taps, as the issue states the draw. */
function drawn(chance) {
  return {
    rate: chance.uniform(40, 140),
    cv: chance.uniform(0.01, 0.25),
    jitter: chance.uniform(0.015, 0.035),
    taps: chance.whole(15, 80),
  };
}

/** Slowly varying: each beat's correlation with the next 0.5 to 0.95, up to half of the variance from breathing. */
function slowness(chance) {
  return {
    correlation: chance.uniform(0.5, 0.95),
    breathsPerMinute: chance.uniform(9, 24),
    breathingShare: chance.uniform(0, 0.5),
  };
}

function coverage(chance, draws, intervalsOf, seen = () => {}) {
  let covered = 0;
  const widths = [];
  for (let i = 0; i < draws; i++) {
    const person = drawn(chance);
    const { low, high } = rangeOf(tapped(chance, intervalsOf(person, i), person.jitter));
    const isCovered = low <= person.rate && person.rate <= high;
    if (isCovered) covered++;
    widths.push((high - low) / 2 / person.rate);
    seen(person, i, isCovered, widths.at(-1));
  }
  return { covered, width: median(widths) };
}

function rangeOf(seconds) {
  const { lowPerMinute, highPerMinute } = resultOf(seconds);
  return { low: lowPerMinute, high: highPerMinute };
}

function median(values) {
  return values.toSorted((a, b) => a - b)[values.length >> 1];
}

function proveCoverage() {
  const chance = generator(SEED);
  const cells = new Map();
  const { covered } = coverage(
    chance,
    DRAWS,
    ({ rate, cv, taps }, i) =>
      i % 2 === 0
        ? independentIntervals(chance, taps - 1, 60 / rate, cv)
        : slowIntervals(chance, taps - 1, 60 / rate, cv, slowness(chance)),
    ({ cv, taps }, i, isCovered, width) => {
      const kind = i % 2 === 0 ? 'independent   ' : 'slowly varying';
      const variation = cv < 0.05 ? ' 1 to  5 %' : cv < 0.15 ? ' 5 to 15 %' : '15 to 25 %';
      const length = taps <= 30 ? '15 to 30' : taps <= 55 ? '31 to 55' : '56 to 80';
      const cell = cellOf(cells, `${kind}, ${variation}, ${length} taps`);
      cell.draws++;
      cell.widths.push(width);
      if (isCovered) cell.covered++;
    },
  );
  check(
    covered / DRAWS >= 0.93 && covered / DRAWS <= 0.97,
    `the 95 % interval covers the true rate in ${percent(covered, DRAWS)} of ${DRAWS} draws (93 to 97 % wanted)`,
  );
  for (const [name, cell] of [...cells.entries()].sort()) {
    const share = cell.covered / cell.draws;
    check(
      share >= 0.88,
      `  ${name}: ${percent(cell.covered, cell.draws)} of ${cell.draws}, median half-width ${(100 * median(cell.widths)).toFixed(2)} %`,
    );
  }
}

function cellOf(cells, name) {
  const cell = cells.get(name) ?? { draws: 0, covered: 0, widths: [] };
  cells.set(name, cell);
  return cell;
}

/** Draws that nobody promised, so that a reader sees where the interval is too short or too long. */
function lookFurther() {
  const draws = 2000;
  const others = [
    ['each beat 0.5 like the last', { correlation: 0.5, breathingShare: 0 }],
    ['each beat 0.8 like the last', { correlation: 0.8, breathingShare: 0 }],
    ['each beat 0.9 like the last', { correlation: 0.9, breathingShare: 0 }],
    ['each beat 0.95 like the last', { correlation: 0.95, breathingShare: 0 }],
    ['breathing alone', { correlation: 0, breathingShare: 1 }],
    ['a wave of 20 to 60 s alone', { correlation: 0, breathingShare: 1, slow: true }],
  ];
  for (const [name, how] of others) {
    const chance = generator(SEED + 1);
    const { covered, width } = coverage(chance, draws, ({ rate, cv, taps }) => {
      const breathsPerMinute = how.slow ? chance.uniform(1, 3) : chance.uniform(9, 24);
      return slowIntervals(chance, taps - 1, 60 / rate, cv, { ...how, breathsPerMinute });
    });
    lines.push(`seen: ${name}: ${percent(covered, draws)}, median half-width ${(100 * width).toFixed(2)} %`);
  }
}

const NOT_REPAIRED = ['irregular-not-repaired', 'steady-not-sure'];

function proveRepairsInSteadyRhythms() {
  const chance = generator(SEED + 2);
  const counts = { found: 0, refused: 0, overlooked: 0, wrong: 0 };
  for (let i = 0; i < DRAWS; i++) {
    const mean = 60 / chance.uniform(40, 90);
    const beats = chance.whole(20, 80);
    const intervals = independentIntervals(chance, beats - 1, mean, chance.uniform(0, 0.03));
    const seconds = tapped(chance, intervals, chance.uniform(0, 0.03));
    const place = chance.whole(1, beats - 2);
    const isMissed = i % 2 === 0;
    const slipped = isMissed
      ? seconds.filter((_, at) => at !== place)
      : [...seconds, seconds[place] + chance.uniform(0.05, 0.15) * mean].sort((a, b) => a - b);
    const { repairs, flags, beats: counted } = resultOf(slipped);
    const [repair] = repairs;
    const isRight =
      repairs.length === 1 &&
      repair.what === (isMissed ? 'missed' : 'doubled') &&
      repair.index === (isMissed ? place : place + 2) &&
      counted === beats;
    if (isRight) counts.found++;
    else if (flags.some(({ code }) => NOT_REPAIRED.includes(code))) counts.refused++;
    else if (repairs.length === 0) counts.overlooked++;
    else counts.wrong++;
  }
  check(
    counts.found / DRAWS >= 0.99 && counts.wrong === 0,
    `a missed or doubled tap planted in a steady rhythm is found at its place in ${percent(counts.found, DRAWS)} of ${DRAWS}; ` +
      `${counts.refused} times the taps were too uneven to repair, ${counts.overlooked} times the slip was overlooked, ${counts.wrong} times the repair was wrong`,
  );
}

/** The draw of steady people: every rate, tapper and number of taps, one tap missed. */
function proveRepairsOverTheDraw() {
  const chance = generator(SEED + 7);
  const cells = new Map();
  const counts = { found: 0, wrong: 0 };
  for (let i = 0; i < DRAWS; i++) {
    const { rate, jitter, taps } = drawn(chance);
    const intervals = independentIntervals(chance, taps - 1, 60 / rate, chance.uniform(0.01, 0.05));
    const place = chance.whole(1, taps - 2);
    const seconds = tapped(chance, intervals, jitter).filter((_, at) => at !== place);
    const { repairs, beats } = resultOf(seconds);
    const isFound = repairs.length === 1 && repairs[0].index === place && beats === taps;
    const speed = rate < 73 ? ' 40 to  73' : rate < 107 ? ' 73 to 107' : '107 to 140';
    const cell = cellOf(cells, `${speed} a minute, jitter ${jitter < 0.025 ? '15 to 25' : '25 to 35'} ms`);
    cell.draws++;
    if (isFound) {
      cell.covered++;
      counts.found++;
    } else if (repairs.length > 0) counts.wrong++;
  }
  check(
    counts.found / DRAWS >= 0.94 && counts.wrong / DRAWS <= 0.001,
    `one missed tap in a steady pulse (variation 1 to 5 %, 15 to 80 taps) is found at its place in ${percent(counts.found, DRAWS)} of ${DRAWS}; ${counts.wrong} repairs were wrong, the rest were left as tapped`,
  );
  for (const [name, { draws, covered }] of [...cells.entries()].sort()) {
    check(covered / draws >= 0.75, `  ${name}: ${percent(covered, draws)} of ${draws}`);
  }
}

function proveNoRepairInChaos() {
  const chance = generator(SEED + 3);
  let repaired = 0;
  const draws = 2 * DRAWS;
  for (let i = 0; i < draws; i++) {
    const n = chance.whole(14, 79);
    const mean = 60 / chance.uniform(40, 140);
    const cv = chance.uniform(0.2, 0.6);
    const intervals =
      i % 2 === 0
        ? independentIntervals(chance, n, mean, cv)
        : Array.from({ length: n }, () => mean * Math.max(0.15, 1 + cv * chance.normal()));
    if (resultOf(tapped(chance, intervals, 0.02)).repairs.length > 0) repaired++;
  }
  check(
    repaired === 0,
    `${repaired} of ${draws} chaotic rhythms (15 to 80 taps, variation 20 to 60 %) were repaired`,
  );
}

function proveRhythms() {
  const words = [...Object.keys(RHYTHMS), 'undecided'];
  const perKind = 1000;
  lines.push(
    `rhythm, at 45 to 100 a minute, 40 to 80 taps, jitter 15 to 35 ms (rows true, columns given): ${words.join(', ')}`,
  );
  for (const [name, recipe] of Object.entries(RHYTHMS)) {
    const chance = generator(SEED + 4);
    const given = Object.fromEntries(words.map((word) => [word, 0]));
    for (let i = 0; i < perKind; i++) {
      const intervals = recipe(chance, chance.whole(39, 79), 60 / chance.uniform(45, 100));
      given[resultOf(tapped(chance, intervals, chance.uniform(0.015, 0.035))).rhythm]++;
    }
    const isIrregular = name.endsWith('ly-irregular') && !name.startsWith('occasionally');
    const calledRegular = given.regular + given['regular-with-breathing'];
    const isSafe = !isIrregular || calledRegular / perKind <= 0.005;
    const isMostly = given[name] / perKind >= 0.75;
    check(isSafe && isMostly, `  ${name}: ${words.map((word) => percent(given[word], perKind)).join(', ')}`);
  }
}

function proveNothingChaoticIsCalledRegular() {
  const bands = [
    [40, 80],
    [80, 120],
    [120, 170],
  ];
  for (const [slow, fast] of bands) {
    const chance = generator(SEED + 6);
    const given = {};
    for (let i = 0; i < DRAWS; i++) {
      const mean = 60 / chance.uniform(slow, fast);
      const intervals = independentIntervals(chance, chance.whole(14, 79), mean, chance.uniform(0.14, 0.25));
      const { rhythm } = resultOf(tapped(chance, intervals, chance.uniform(0.01, 0.035)));
      given[rhythm] = (given[rhythm] ?? 0) + 1;
    }
    const regular = given.regular ?? 0;
    const breathing = given['regular-with-breathing'] ?? 0;
    check(
      regular === 0 && breathing / DRAWS < 0.01,
      `without a pattern, ${slow} to ${fast} a minute, variation 14 to 25 %, jitter 10 to 35 ms, 15 to 80 taps: ` +
        `${regular} of ${DRAWS} called regular, ${breathing} regular with breathing`,
    );
  }
}

function proveBeatsDroppedInTurn() {
  const chance = generator(SEED + 8);
  const counts = { inTurn: 0, regular: 0, putIn: 0, untold: 0 };
  for (let i = 0; i < DRAWS; i++) {
    const every = chance.whole(3, 15);
    const from = chance.whole(0, every - 2);
    const isGap = (at) => (at + from) % (every - 1) === every - 2;
    const { rate, jitter, taps } = drawn(chance);
    const steady = independentIntervals(chance, taps - 1, 60 / rate, chance.uniform(0.01, 0.05));
    const intervals = steady.map((interval, at) => (isGap(at) ? 2 * interval : interval));
    if (intervals.filter((_, at) => isGap(at)).length < 3) continue;
    const { rhythm, repairs, flags } = resultOf(tapped(chance, intervals, jitter));
    counts.inTurn++;
    if (rhythm.startsWith('regular') && rhythm !== 'regularly-irregular') counts.regular++;
    if (repairs.some(({ added }) => added > 0)) counts.putIn++;
    if (flags.length === 0) counts.untold++;
  }
  check(
    counts.regular === 0 && counts.untold === 0 && counts.putIn / counts.inTurn <= 0.02,
    `of ${counts.inTurn} pulses with a beat dropped in turn, three times or more, at every 3rd to 15th: ${counts.regular} called regular, ${counts.untold} without a flag, beats put in in ${percent(counts.putIn, counts.inTurn)}`,
  );
}

function proveJitter() {
  for (const jitter of [0.015, 0.025, 0.035]) {
    const chance = generator(SEED + 5);
    const squares = [];
    let untold = 0;
    for (let i = 0; i < 2000; i++) {
      const { tapJitterMs } = resultOf(tapped(chance, independentIntervals(chance, 79, 0.85, 0.02), jitter));
      if (tapJitterMs === null) untold++;
      else squares.push(tapJitterMs ** 2);
    }
    const found = Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
    check(
      Math.abs(found / (1000 * jitter) - 1) < 0.15,
      `a jitter of ${1000 * jitter} ms is found as ${found.toFixed(1)} ms (80 taps, variation 2 %); could not be told in ${percent(untold, 2000)}`,
    );
  }
}

proveCoverage();
lookFurther();
proveRepairsInSteadyRhythms();
proveRepairsOverTheDraw();
proveNoRepairInChaos();
proveRhythms();
proveNothingChaoticIsCalledRegular();
proveBeatsDroppedInTurn();
proveJitter();
for (const line of lines) console.log(line);
console.log(JSON.stringify({ name: 'taps', passed, failed, lines }));
process.exitCode = failed === 0 ? 0 : 1;

// Statistics of real beats beside those of the simulated heart, as a figure and a page.
import { readFile } from 'node:fs/promises';

const FIXTURES = new URL('../packages/clinical/fixtures/', import.meta.url);
/** Five minutes: the span of short-term figures of a pulse. */
const STRETCH_SECONDS = 300;
const SEED = 2026;

async function rows(file) {
  const text = await readFile(new URL(file, FIXTURES), 'utf8');
  return text.trim().split('\n').slice(1);
}

/** Real and simulated beats in pairs, each with its times in seconds and where they are from. */
export async function rhythmsOf({ BLANK, beats, makePerson, PROPER }) {
  const record = (await rows('mitdb-100-beats.csv')).map((row) => Number(row.split(',')[0]) / 360);
  const tilt = (await rows('tilt-12726-pulse-onsets.csv')).map((row) => Number(row) / 1000);
  const simulated = (rhythm, ageYears, seconds) =>
    beats(
      makePerson({ ...BLANK, ageYears, rhythm: { ...BLANK.rhythm, ...rhythm } }, SEED),
      PROPER,
      0,
      seconds,
    ).map(({ footSeconds }) => footSeconds);
  const old = { kind: 'atrial-ectopics', ratePerMinute: 75.5, variation: '65-74', ectopicsPerMinute: 1.1 };
  const young = { kind: 'sinus', ratePerMinute: 67.8, variation: '25-34' };
  return [
    {
      real: statisticsOf('MIT-BIH record 100, a man of 69, half an hour', record),
      simulated: statisticsOf(
        'simulated: 65 to 74 years, 75.5 a minute, 1.1 premature a minute',
        simulated(old, 69, 1805),
      ),
    },
    {
      real: statisticsOf('tilt-table record 12726, a man of 28, an hour', tilt),
      simulated: statisticsOf(
        'simulated: 25 to 34 years, 67.8 a minute, sitting',
        simulated(young, 28, 3247),
      ),
    },
  ];
}

/** What a list of beats comes to. Intervals in ms; an interval that is far from those about it is left out of `kept`. */
export function statisticsOf(name, seconds) {
  const all = seconds.slice(1).map((at, i) => ({ at, ms: 1000 * (at - seconds[i]) }));
  const kept = all.filter(({ ms }, i) => {
    const about = all.slice(Math.max(0, i - 5), i + 6).map((one) => one.ms);
    const middle = medianOf(about);
    return ms > 0.7 * middle && ms < 1.3 * middle;
  });
  const stretches = [];
  for (let from = 0; from + STRETCH_SECONDS <= (seconds.at(-1) ?? 0); from += STRETCH_SECONDS) {
    const inside = kept.filter(({ at }) => at >= from && at < from + STRETCH_SECONDS).map(({ ms }) => ms);
    if (inside.length > 100) stretches.push({ sd: sdOf(inside), rmssd: rmssdOf(inside) });
  }
  const ms = all.map((one) => one.ms);
  return {
    name,
    all,
    intervals: ms.length,
    mean: meanOf(ms),
    sd: sdOf(ms),
    rmssd: rmssdOf(ms),
    leftOut: all.length - kept.length,
    keptMean: meanOf(kept.map((one) => one.ms)),
    keptSd: sdOf(kept.map((one) => one.ms)),
    keptRmssd: rmssdOf(kept.map((one) => one.ms)),
    stretches: stretches.length,
    stretchSd: medianOf(stretches.map(({ sd }) => sd)),
    stretchRmssd: medianOf(stretches.map(({ rmssd }) => rmssd)),
    kept: kept.map((one) => one.ms),
  };
}

export function meanOf(values) {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}

/** Divided by n - 1. */
export function sdOf(values) {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
}

/** Root of the mean square of the differences from one interval to the next. */
export function rmssdOf(values) {
  const squares = values.slice(1).map((one, i) => (one - values[i]) ** 2);
  return Math.sqrt(meanOf(squares));
}

function medianOf(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)] : (sorted[half - 1] + sorted[half]) / 2;
}

// The figure: for each pair five minutes of intervals of both, and how often each length of an interval comes.
const WIDTH = 960;
const ROW = 300;
const TOP = 40;
const INK = '#242830';
const REAL = '#8b93a1';
const OURS = '#a4371d';
const LEAST_MS = 400;
const MOST_MS = 1400;
const BIN_MS = 20;
const px = (value) => (Math.round(value * 10) / 10).toString();

export function rhythmsFigure(pairs) {
  const body = pairs.map((pair, at) => rowOf(pair, TOP + at * ROW)).join('\n');
  const height = TOP + pairs.length * ROW + 10;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" font-family="sans-serif" font-size="13" role="img" aria-label="Intervals between beats: real hearts beside simulated ones">
<rect width="${WIDTH}" height="${height}" fill="#fdfaf0"/>
<text x="20" y="24" font-size="16" font-weight="600" fill="${INK}">Intervals from beat to beat: real hearts (grey) beside simulated ones (red)</text>
${body}
</svg>
`;
}

function rowOf({ real, simulated }, top) {
  return [
    course(real, REAL, 20, top + 30),
    course(simulated, OURS, 20, top + 158),
    histogram(real, simulated, 590, top + 30),
  ].join('\n');
}

/** Five minutes in the middle, each interval at its beat. */
function course({ name, all }, colour, left, top) {
  const [width, height] = [480, 84];
  const from = (all.at(-1).at - STRETCH_SECONDS) / 2;
  const y = (ms) => top + height * (1 - (clamped(ms) - LEAST_MS) / (MOST_MS - LEAST_MS));
  const points = all
    .filter(({ at }) => at >= from && at < from + STRETCH_SECONDS)
    .map(({ at, ms }) => `${px(left + (width * (at - from)) / STRETCH_SECONDS)},${px(y(ms))}`);
  return [
    `<text x="${left}" y="${top - 8}" fill="${INK}">${name}</text>`,
    ...[600, 1000].map(
      (ms) =>
        `<path d="M${left} ${px(y(ms))} h${width}" stroke="${INK}" opacity=".2"/><text x="${left + width + 4}" y="${px(y(ms) + 4)}" font-size="11" fill="${INK}">${ms} ms</text>`,
    ),
    `<polyline points="${points.join(' ')}" fill="none" stroke="${colour}" stroke-width="1"/>`,
  ].join('\n');
}

/** Share of all kept intervals in each 20 ms. */
function histogram(real, simulated, left, top) {
  const [width, height] = [350, 172];
  const bins = (MOST_MS - LEAST_MS) / BIN_MS;
  const shares = ({ kept }) =>
    Array.from(
      { length: bins },
      (_, bin) =>
        kept.filter((ms) => Math.floor((clamped(ms) - LEAST_MS) / BIN_MS) === bin).length / kept.length,
    );
  const [ofReal, ofOurs] = [shares(real), shares(simulated)];
  const most = Math.max(...ofReal, ...ofOurs);
  const x = (bin) => left + (width * bin) / bins;
  const y = (share) => top + height * (1 - share / most);
  const outline = (of) =>
    `M${px(x(0))} ${px(y(0))} ${of.map((share, bin) => `L${px(x(bin))} ${px(y(share))} L${px(x(bin + 1))} ${px(y(share))}`).join(' ')} L${px(x(bins))} ${px(y(0))}`;
  const says = ({ keptMean, keptSd, keptRmssd }) =>
    `mean ${Math.round(keptMean)}, SD ${Math.round(keptSd)}, RMSSD ${Math.round(keptRmssd)} ms`;
  return [
    `<text x="${left}" y="${top - 8}" fill="${INK}">how often each length comes, 20 ms a step</text>`,
    `<path d="${outline(ofReal)} Z" fill="${REAL}" opacity=".5"/>`,
    `<path d="${outline(ofOurs)}" fill="none" stroke="${OURS}" stroke-width="1.6"/>`,
    `<path d="M${left} ${top + height} h${width}" stroke="${INK}"/>`,
    ...[400, 600, 800, 1000, 1200, 1400].map(
      (ms) =>
        `<text x="${px(left + (width * (ms - LEAST_MS)) / (MOST_MS - LEAST_MS))}" y="${top + height + 16}" font-size="11" text-anchor="middle" fill="${INK}">${ms}</text>`,
    ),
    `<text x="${left + width}" y="${top + height + 36}" text-anchor="end" fill="#5d6470">${says(real)}</text>`,
    `<text x="${left + width}" y="${top + height + 54}" text-anchor="end" fill="${OURS}">${says(simulated)}</text>`,
  ].join('\n');
}

function clamped(ms) {
  return Math.max(LEAST_MS, Math.min(MOST_MS - 1, ms));
}

export function rhythmsPage(pairs) {
  const whole = (value) => String(Math.round(value));
  const line = (one) =>
    `| ${[one.name, one.intervals, whole(one.mean), whole(one.sd), whole(one.rmssd), one.leftOut, whole(one.keptSd), whole(one.keptRmssd), `${whole(one.stretchSd)} / ${whole(one.stretchRmssd)} (${one.stretches})`].join(' | ')} |`;
  return `# Simulated rhythms beside real ones

Written by \`node tools/rhythms.mjs --write\`; a test holds it against the code. All in ms.

![Intervals between beats of real hearts beside simulated ones](rhythms.svg)

| beats | intervals | mean | SD | RMSSD | left out | SD of the rest | RMSSD of the rest | SD / RMSSD of five minutes, the middle of so many |
| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
${pairs.flatMap(({ real, simulated }) => [line(real), line(simulated)]).join('\n')}

Left out of the rest: intervals that differ by more than 30 % from the middle of the eleven about them (premature beats and their pauses; in the second record, whose onsets no hand checked, missed ones too).

What is alike by choice: the rate, how old the person is, how often a beat comes early. What is not fitted: the size of each variation. It comes from tables of many people
([sources](sources.md)), and two records are two people. The man of 69 differs more from one beat to the next than the middle of his age does; where his beats lie on the whole, and how wide, is met. The
man of 28 was tilted upright during his hour while the simulated person sits still throughout: his hour is wider than theirs, in five minutes of it too, and from one beat to the next it is about the same.

Real beats: MIT-BIH Arrhythmia Database, record 100 (reference annotations), and the tilt-table record 12726 (automatic pulse onsets), both PhysioNet, with their licence and what to cite in
[the fixtures](../packages/clinical/fixtures/README.md). Simulated ones are invented: seed ${SEED}.
`;
}

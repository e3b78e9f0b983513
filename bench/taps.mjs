// Tap statistics a second, for 60 taps, against the same statistics from a general-purpose package, in one run: the
// statistics alone, like for like, and a whole result. The package has no repair, no interval of the rate, no jitter
// and no rhythm, which is most of the work of a whole result.
import * as simple from 'simple-statistics';
import { Bench } from 'tinybench';
import { tapResult } from '../packages/clinical/dist/index.js';
import { intervalStatistics, wholeIntervalsMs } from '../packages/clinical/dist/taps/intervalStatistics.js';
import { unrepairedTaps } from '../packages/clinical/dist/taps/repair.js';
import { generator, independentIntervals, tapped } from '../packages/clinical/fixtures/people.mjs';

const chance = generator(60);
const everybody = Array.from({ length: 500 }, () => {
  const intervals = independentIntervals(chance, 59, 60 / chance.uniform(50, 110), chance.uniform(0.01, 0.2));
  return { of: 'pulse', source: 'key', seconds: tapped(chance, intervals, 0.025) };
});
let turn = 0;
const next = () => everybody[turn++ % everybody.length];

/** Mean, SD, RMSSD, turning points and entropy of the intervals, as one would write them with the package. */
function general(seconds) {
  const intervals = seconds.slice(1).map((time, i) => (time - seconds[i]) * 1000);
  const differences = intervals.slice(1).map((interval, i) => interval - intervals[i]);
  const mean = simple.mean(intervals);
  const sd = simple.sampleStandardDeviation(intervals);
  const rmssd = simple.rootMeanSquare(differences);
  const turns = differences.slice(1).filter((difference, i) => difference * differences[i] < 0).length;
  const [least, greatest] = simple.extent(intervals);
  const bins = intervals.map((one) => Math.min(15, Math.floor(((one - least) / (greatest - least)) * 16)));
  const shares = Array.from(
    { length: 16 },
    (_, bin) => bins.filter((one) => one === bin).length / bins.length,
  );
  const entropy =
    -simple.sum(shares.map((share) => (share > 0 ? share * Math.log(share) : 0))) / Math.log(16);
  return {
    mean,
    sd,
    cv: sd / mean,
    rmssd,
    nrmssd: rmssd / mean,
    turns: turns / (differences.length - 1),
    entropy,
  };
}

function ours(taps) {
  const read = unrepairedTaps(taps);
  return intervalStatistics(read, wholeIntervalsMs(read));
}

// The same numbers, or the race means nothing.
for (const taps of everybody) {
  const [one, other] = [ours(taps), general(taps.seconds)];
  const pairs = [
    [one.meanIntervalMs, other.mean],
    [one.sdIntervalMs, other.sd],
    [one.rmssdMs, other.rmssd],
    [one.turningPointRatio, other.turns],
    [one.shannonEntropy, other.entropy],
  ];
  if (pairs.some(([a, b]) => Math.abs(a - b) > 1e-5)) throw new Error(`differ: ${JSON.stringify(pairs)}`);
}

const bench = new Bench({ time: 1500, warmupTime: 300 });
bench
  .add('tapResult, repaired', () => tapResult(next(), { repair: true }))
  .add('tapResult, as read', () => tapResult(next(), { repair: false }))
  .add('our statistics alone', () => ours(next()))
  .add('the same with simple-statistics', () => general(next().seconds));
await bench.run();

const perSecond = bench.tasks.map(({ name, result }) => ({ name, rate: 1000 / result.latency.mean }));
const peer = perSecond.at(-1);
for (const { name, rate } of perSecond) {
  console.log(`${name}: ${Math.round(rate)} a second, ${(rate / peer.rate).toFixed(2)} of ${peer.name}`);
}

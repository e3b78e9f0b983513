// Tap statistics a second: everything a result of 60 taps holds, against the same statistics from a general-purpose
// package, in one run. The package has no repair, no interval of the rate, no jitter and no rhythm.
import * as simple from 'simple-statistics';
import { Bench } from 'tinybench';
import { tapResult } from '../packages/clinical/dist/index.js';
import { generator, independentIntervals, tapped } from '../packages/clinical/fixtures/people.mjs';

const chance = generator(60);
const everybody = Array.from({ length: 500 }, () => {
  const intervals = independentIntervals(chance, 59, 60 / chance.uniform(50, 110), chance.uniform(0.01, 0.2));
  return { of: 'pulse', source: 'key', seconds: tapped(chance, intervals, 0.025) };
});
let turn = 0;
const next = () => everybody[turn++ % everybody.length];

/** Rate, mean, SD, RMSSD, medians and the lag-one covariance, as one would write them with the package. */
function general(seconds) {
  const intervals = seconds.slice(1).map((time, i) => (time - seconds[i]) * 1000);
  const differences = intervals.slice(1).map((interval, i) => interval - intervals[i]);
  const mean = simple.mean(intervals);
  const sd = simple.sampleStandardDeviation(intervals);
  const rmssd = simple.rootMeanSquare(differences);
  return {
    perMinute: 60_000 / mean,
    mean,
    sd,
    cv: sd / mean,
    rmssd,
    nrmssd: rmssd / mean,
    median: simple.median(intervals),
    spread: simple.medianAbsoluteDeviation(intervals),
    neighbours: simple.sampleCovariance(intervals.slice(1), intervals.slice(0, -1)),
  };
}

const bench = new Bench({ time: 1500, warmupTime: 300 });
bench
  .add('tapResult, repaired', () => tapResult(next(), { repair: true }))
  .add('tapResult, as read', () => tapResult(next(), { repair: false }))
  .add('simple-statistics, the statistics alone', () => general(next().seconds));
await bench.run();

const perSecond = bench.tasks.map(({ name, result }) => ({ name, rate: 1000 / result.latency.mean }));
const peer = perSecond.at(-1);
for (const { name, rate } of perSecond) {
  console.log(`${name}: ${Math.round(rate)} a second, ${(rate / peer.rate).toFixed(2)} of ${peer.name}`);
}

// What a round costs: its state folded from every event and the next step (at each touch), its result (at each touch,
// and once more on the server), its content charted. Against the same round through JSON text and back, in the same run.
import { Bench } from 'tinybench';
import {
  NO_ROUND_FACTS,
  nextStep,
  presetProtocol,
  readingsCircumstances,
  roundResult,
  roundRules,
  roundState,
} from '../packages/clinical/dist/index.js';
import { generator } from '../packages/clinical/fixtures/people.mjs';

const { uniform: chance } = generator(83);
const whole = (low, high) => low + Math.floor(chance() * (high - low + 1));
const chosen = presetProtocol({ category: 'esc-2024', readings: 'esc-2024', score: 'adult-early-warning' });
if (!chosen.ok) throw new Error(JSON.stringify(chosen.refusals));
const rules = roundRules(chosen.value);
const PLACE = { site: 'upper-arm', side: 'right', posture: 'sit' };

/** A round of an adult: three readings a minute apart, every other sign. */
function round(at) {
  const systolic = whole(95, 190);
  const readings = [0, 1, 2].map((turn) => ({
    ...PLACE,
    id: `r${turn}`,
    method: 'auscultation',
    systolic: systolic + whole(-6, 6),
    diastolic: Math.round(systolic * 0.6) + whole(-4, 4),
    pulsePerMinute: 72,
    uprightMinutes: null,
    atSeconds: 200 + 90 * turn,
    irregular: false,
  }));
  const taken = (value) => ({ what: 'taken', value });
  const rate = (of, perMinute) =>
    taken({ id: of, of, perMinute, isFeltIrregular: false, nextWindowSeconds: null });
  const pulse = whole(50, 110);
  const breaths = whole(10, 24);
  const facts = { ...NO_ROUND_FACTS, ageMonths: 12 * whole(18, 90), isPregnant: false };
  return {
    at,
    facts,
    events: [
      { what: 'prepared', exceptions: [] },
      rate('pulse', pulse),
      rate('breaths', breaths),
      { what: 'placed', place: PLACE },
      { what: 'estimated', estimate: { ...PLACE, lostMmHg: systolic, atSeconds: 170 } },
      ...readings.map(({ irregular, ...reading }) => taken({ ...reading, of: 'pressure' })),
      ...['temperature', 'oxygen', 'consciousness'].map((of) => taken({ id: of, of })),
      { what: 'reviewed' },
    ],
    input: {
      readings,
      pulse,
      breaths,
      isFeltIrregular: false,
      temperature: 36 + chance() * 3,
      oxygen: { percent: whole(90, 99), onOxygen: false, isDoubtful: false },
      consciousness: 'alert',
      heightCm: 170,
      weightKg: 70,
      features: [],
      unwell: false,
      facts,
    },
  };
}

const rounds = Array.from({ length: 500 }, (_, at) => round(at));

// What is raced must be right: ESC 2024 takes the second and third reading, and nothing that happened is lost.
for (const { input, events } of rounds) {
  const { pressure } = roundResult(input, rules);
  const expected = (input.readings[1].systolic + input.readings[2].systolic) / 2;
  if (pressure?.systolic !== expected) throw new Error(`${pressure?.systolic} in place of ${expected}`);
  if (roundState(events).values.length !== 8) throw new Error('a value was lost');
}

let turn = 0;
const next = () => rounds[turn++ % rounds.length];
const bench = new Bench({ time: 1500, warmupTime: 300 });
bench
  .add('state folded and next step', () => {
    const { events, facts, input } = next();
    return nextStep(roundState(events), facts, readingsCircumstances(input, rules), rules);
  })
  .add('result made', () => roundResult(next().input, rules))
  .add('round through JSON and back', () => JSON.parse(JSON.stringify(next())));
await bench.run();

const perSecond = bench.tasks.map(({ name, result }) => ({ name, rate: 1000 / result.latency.mean }));
const peer = perSecond.at(-1);
for (const { name, rate } of perSecond) {
  console.log(`${name}: ${Math.round(rate)} a second, ${(rate / peer.rate).toFixed(2)} of ${peer.name}`);
}

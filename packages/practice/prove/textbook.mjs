/**
 * The book's own hand in every scenario: who takes a pressure by the rules has done nothing wrong, and is told so.
 *
 *   node packages/practice/prove/textbook.mjs [VISITS]
 *
 * VISITS of each scenario, by seed from 1 on. The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import { bladderFor, PROPER, SCENARIOS, SOUND_INSTRUMENT } from '@evenfall/physiology';
import { debrief, demonstrate, GOOD_OBSERVER } from '../dist/index.js';

const VISITS = Number(process.argv[2] ?? 20);
const lines = [];
let [passed, failed, without] = [0, 0, 0];

/** Noise and a gauge that shows wrong come with the place and the instrument; sounds from the first beat on were there to be heard. */
const NOT_OF_THE_HAND = ['noise', 'gauge-off', 'began-in-sounds'];

/** What such a visit is blamed for; null for nothing. Bedside handbook 3.4 to 3.7. */
function blamed({ costs, accepted, conduct }) {
  const own = costs.costs.filter(({ code }) => !NOT_OF_THE_HAND.includes(code));
  if (own.length > 0) return own.map(({ code }) => code).join(', ');
  if (costs.costs.length > 0) return null;
  without++;
  for (const side of ['systolic', 'diastolic'])
    if (!(Math.abs(costs.left?.[side] ?? 99) <= 4) || !accepted[side])
      return `a ${side} that is ${costs.left?.[side]} off`;
  return conduct.length > 0 ? conduct.map(({ code }) => code).join(', ') : null;
}

for (const scenario of SCENARIOS) {
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm), ...scenario.instrument };
  for (let seed = 1; seed <= VISITS; seed++) {
    const fault = blamed(debrief(demonstrate(GOOD_OBSERVER, scenario, seed, PROPER, instrument)));
    if (fault === null) passed++;
    else {
      failed++;
      lines.push(`FAILED: ${scenario.id}, seed ${seed}: ${fault}`);
    }
  }
}
lines.unshift(
  `${passed} of ${passed + failed} visits in ${SCENARIOS.length} scenarios are blamed for nothing; in ${without} of them there was nothing of the place or the instrument either`,
);

for (const line of lines) console.log(line);
console.log(JSON.stringify({ name: 'The textbook’s hand in every scenario', passed, failed, lines }));

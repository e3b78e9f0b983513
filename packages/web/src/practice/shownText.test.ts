import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { showing } from '@evenfall/practice';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { besideText, isCounted, sensedText, stepText, toldText } from './shownText.js';

const shownOf = (id: string) => showing(scenarioOf(id) as Scenario, 3);

// The palpatory estimate comes before listening (bedside handbook 3.4): nothing is listened to meanwhile.
test('while the wrist is felt nobody is told to listen', async () => {
  const words = await loadWords('en');
  const { steps, manner } = shownOf('stiff-pipe');
  const said = new Map(steps.map(({ code }) => [code, words.sentence(sensedText(code, manner))]));
  for (const code of ['looking', 'feeling', 'lost', 'waiting', 'pumping', 'emptying'] as const)
    expect(said.get(code)).not.toMatch(/listen/i);
  for (const code of ['feeling', 'lost'] as const) expect(said.get(code)).toMatch(/wrist/);
  for (const code of ['falling', 'first', 'gap', 'gap-over', 'last'] as const)
    expect(said.get(code)).toMatch(/^Listen/);
  const cold = shownOf('cold-hands');
  for (const { code } of cold.steps)
    expect(words.sentence(sensedText(code, cold.manner))).not.toMatch(/listen/i);
});

test.each(['en', 'es'])(
  '%s: the silent gap is named to a learner, and not to a class that is to find it',
  async (language) => {
    const words = await loadWords(language);
    const { steps, manner } = shownOf('stiff-pipe');
    const [gap, over] = ['gap', 'gap-over'].map((code) => steps.find((one) => one.code === code));
    if (gap === undefined || over === undefined) throw new Error('no gap is shown');
    const name = language === 'en' ? /silent gap/i : /intervalo silencioso|silencio/i;
    expect(stepText(gap, manner, words, true)).toMatch(name);
    expect(stepText(gap, manner, words, true)).toContain(String(gap.mmHg));
    expect(stepText(over, manner, words, true)).toContain(String(over.mmHg));
    for (const step of [gap, over]) {
      expect(stepText(step, manner, words, false)).not.toMatch(name);
      expect(stepText(step, manner, words, false)).not.toMatch(/\d/);
    }
  },
);

test('while it is counted the gauge has nothing to show; once the cuff is on it has', () => {
  expect(
    (['pulse', 'breaths', 'breaths-counted', 'at-apex', 'both-counted'] as const).map(isCounted),
  ).toEqual(Array(5).fill(true));
  expect((['looking', 'feeling', 'pumping', 'falling', 'first'] as const).map(isCounted)).toEqual(
    Array(5).fill(false),
  );
});

test.each(['en', 'es'])(
  '%s: what a class is to do stands once, and a learner is told it with the step',
  async (language) => {
    const words = await loadWords(language);
    const { steps, manner } = shownOf('stiff-pipe');
    for (const step of steps) {
      const state = words.sentence(sensedText(step.code, manner));
      expect(besideText(step, manner, words, false) ?? '').not.toContain(state);
    }
    const falling = steps.find(({ code }) => code === 'falling');
    if (falling === undefined) throw new Error('nothing falls');
    expect(toldText(falling, manner, words)).toContain(words.sentence('practice.roomListens'));
    const breaths = { code: 'breaths', mmHg: null } as const;
    expect(toldText(breaths, manner, words)).toContain(words.sentence('showing.countAlong'));
    expect(besideText(breaths, manner, words, true)).not.toContain(words.sentence('showing.countAlong'));
  },
);

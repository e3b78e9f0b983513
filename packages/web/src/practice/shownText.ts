import type { Manner, ShownStep } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** Steps of which a pressure is told. */
const TOLD = [
  'other-gauge',
  'lost',
  'pumping',
  'first',
  'muffled',
  'last',
  'every-beat',
  'gap',
  'gap-over',
  'back',
] as const;
type Told = (typeof TOLD)[number];

function isTold(code: ShownStep['code']): code is Told {
  return (TOLD as readonly string[]).includes(code);
}

/** What is done at a step. @param hasNumbers false where a class is to find them itself */
export function stepText(
  { code, mmHg, perMinute, counted }: Pick<ShownStep, 'code' | 'mmHg' | 'perMinute' | 'counted'>,
  manner: Manner,
  words: Words,
  hasNumbers: boolean,
): string {
  if (code === 'both-counted')
    return words.sentence(
      'showing.bothCounted',
      hasNumbers && perMinute !== undefined ? perMinute : { heart: null, wrist: null },
    );
  if (code === 'pulse' || code === 'breaths') return words.sentence(`showing.${code}`);
  if (code === 'pulse-counted' || code === 'breaths-counted') {
    const n = hasNumbers ? (counted?.n ?? null) : null;
    return words.sentence(`showing.${code}`, { n, seconds: counted?.windowSeconds ?? 0 });
  }
  if (isTold(code)) return words.sentence(`showing.${code}`, { mmHg: hasNumbers ? mmHg : null });
  return words.sentence(
    code === 'falling' && manner === 'by-feel' ? 'showing.fallingFelt' : `showing.${code}`,
  );
}

/** The same for one learner, to whom nothing else says what to do with eyes and ears meanwhile. */
export function toldText(step: Parameters<typeof stepText>[0], manner: Manner, words: Words): string {
  const text = stepText(step, manner, words, true);
  const { code } = step;
  const isAlong = code === 'pulse' || code === 'breaths' || (code === 'falling' && manner !== 'by-feel');
  return isAlong ? `${text} ${words.sentence(sensedText(code, manner))}` : text;
}

/** What is done at a step, for a class that reads above it what to do; null: that is all there is to say. */
export function besideText(
  step: Parameters<typeof stepText>[0],
  manner: Manner,
  words: Words,
  hasNumbers: boolean,
): string | null {
  const text = stepText(step, manner, words, hasNumbers);
  return text === words.sentence(sensedText(step.code, manner)) ? null : text;
}

/** Whether a step is one of counting, at the wrist, the chest or the apex: the gauge has nothing to show. */
export function isCounted(code: ShownStep['code']): boolean {
  return COUNTED.has(code);
}
const COUNTED: ReadonlySet<ShownStep['code']> = new Set([
  'pulse',
  'pulse-counted',
  'breaths',
  'breaths-counted',
  'at-apex',
  'both-counted',
]);

/** What a class does at a step with its eyes and ears: nobody listens while a wrist is felt. */
export function sensedText(code: ShownStep['code'], manner: Manner) {
  switch (code) {
    case 'feeling':
    case 'lost':
      return 'showing.wristIsFelt' as const;
    case 'waiting':
      return 'showing.wait' as const;
    case 'pulse':
    case 'breaths':
      return 'showing.countAlong' as const;
    case 'pulse-counted':
    case 'breaths-counted':
      return 'showing.sayIt' as const;
    case 'looking':
    case 'other-gauge':
    case 'quieter':
    case 'loud':
    case 'measured':
    case 'pumping':
    case 'emptying':
    case 'over':
      return 'showing.watch' as const;
    default:
      return manner === 'by-feel' ? ('showing.wristIsFelt' as const) : ('practice.roomListens' as const);
  }
}

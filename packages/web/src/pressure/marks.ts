import { type DeflationRules, gaugeRead, parseRun, type Refusal, type Run } from '@evenfall/clinical';
import type { MarkedByWhom, RunMarkedBy } from '@evenfall/record';
import { firstToRead } from './firstToRead.js';
import type { Mark, MarkedAs, MarkOf, PressureAt, SecondTouch } from './pressureDraft.js';
import type { RunAround } from './readRun.js';

export type Listening = Extract<PressureAt, { at: 'listening' }>;
export type ReadingBack = Extract<PressureAt, { at: 'reading' }>;

/** Two touches closer than this are one that bounced, ms: no two moments of a run are. Source: decision. */
export const SAME_TOUCH_MS = 150;
/** The most touches of one run; whatever comes after is not of it. Source: decision; the record keeps 20 moments. */
export const MOST_TOUCHES = 12;

/** One more touch. One that bounced, or that comes after any run is over, changes nothing. */
export function touched<Of extends Pick<Listening, 'touchesMs' | 'second'>>(listening: Of, atMs: number): Of {
  const { touchesMs } = listening;
  const last = touchesMs.at(-1) ?? Number.NEGATIVE_INFINITY;
  if (atMs - last < SAME_TOUCH_MS || touchesOf(listening).length >= MOST_TOUCHES) return listening;
  return { ...listening, touchesMs: [...touchesMs, atMs] };
}

export function lastTouchUndone(listening: Listening): Listening {
  return { ...listening, touchesMs: listening.touchesMs.slice(0, -1) };
}

/** A touch of a run by this device's clock, and who made it. */
export type Touch = { readonly atMs: number; readonly by: MarkedByWhom };

/** Every touch of a run in the order of time, on whichever of the two devices it was made. */
export function touchesOf({ touchesMs, second }: Pick<Listening, 'touchesMs' | 'second'>): readonly Touch[] {
  const own = touchesMs.map((atMs): Touch => ({ atMs, by: 'observer' }));
  const others = (second?.touches ?? []).map(({ atMs }): Touch => ({ atMs, by: 'second-person' }));
  return [...own, ...others].sort((a, b) => a.atMs - b.atMs);
}

/**
 * What a second person marked, as it stands on their device by now, told again in whole each time. What came before this
 * cuff went up is not of this run; nor is what they mark once whoever measures marks instead.
 */
export function withSecond(listening: Listening, touches: readonly SecondTouch[]): Listening {
  const { second, inflatedAt, touchesMs } = listening;
  if (second === undefined) return listening;
  const ofRun = touches
    .filter(
      ({ atMs, withinMs }) =>
        atMs + withinMs >= inflatedAt.atMs && (second.takenOverAtMs === null || atMs <= second.takenOverAtMs),
    )
    .slice(0, MOST_TOUCHES - touchesMs.length);
  const isSame =
    ofRun.length === second.touches.length &&
    ofRun.every(({ id, atMs }, at) => second.touches[at]?.id === id && second.touches[at]?.atMs === atMs);
  return isSame ? listening : { ...listening, second: { ...second, touches: ofRun } };
}

/** Whoever measures marks from now on, and keeps what was marked on the other device. */
export function takenOver(listening: Listening, atMs: number): Listening {
  const { second } = listening;
  if (second === undefined || second.takenOverAtMs !== null) return listening;
  return { ...listening, second: { ...second, takenOverAtMs: atMs } };
}

/**
 * What each touch is taken to be of, by how many there are: the two sounds alone; from three on the first is the opening
 * of the valve; a fourth is muffling before the last sound. Of more than four those between are slips until somebody says
 * what they were.
 *
 * @param isOpened the opening of the valve is known without a touch: then none is of it, and a third is muffling
 */
export function marksOf(count: number, isOpened = false): readonly MarkOf[] {
  return isOpened && count > 1 ? marksOfTouches(count + 1).slice(1) : marksOfTouches(count);
}

function marksOfTouches(count: number): readonly MarkOf[] {
  if (count < 3) return (['first sound', 'last sound'] as const).slice(0, count);
  if (count === 3) return ['peak', 'first sound', 'last sound'];
  if (count === 4) return ['peak', 'first sound', 'muffled', 'last sound'];
  return ['peak', 'first sound', ...Array.from({ length: count - 3 }, () => 'slip' as const), 'last sound'];
}

/** What the touches so far were asked for, while the run goes on. */
export function askedOf(count: number, isOpened = false): readonly MarkOf[] {
  if (isOpened) return count < 2 ? (['first sound'] as const).slice(0, count) : marksOf(count, true);
  return count < 3 ? (['peak', 'first sound'] as const).slice(0, count) : marksOf(count);
}

/** The opening of the valve, where it is known without a touch. */
const OPENED: Mark = { what: 'peak', atSeconds: 0, isTouch: false, typed: '' };

/** A run that is over, as far as it was marked. */
type Marked = Omit<Listening, 'at' | 'session' | 'inflatedAt'> & Pick<ReadingBack, 'inflatedAt'>;

/** The run is over: now the gauge is read back for each moment, on a blank face. A sound that was not touched has no time. */
export function listened(marked: Marked): ReadingBack {
  const { measuredAt, inflatedAt, second, fields = {}, method = 'auscultation', openedAtMs } = marked;
  const touches = touchesOf(marked);
  const first = openedAtMs ?? touches[0]?.atMs ?? 0;
  const named = (of: readonly Touch[], marks: readonly MarkOf[]) =>
    marks.map((what, at): Mark => {
      const { atMs, by } = of[at] ?? { atMs: first, by: 'observer' };
      const atSeconds = Math.round(atMs - first) / 1000;
      return by === 'observer' ? { what, atSeconds, typed: '' } : { what, atSeconds, by, typed: '' };
    });
  const rising = touches.filter(({ atMs }) => openedAtMs !== undefined && atMs <= openedAtMs);
  const falling = touches.slice(rising.length);
  const touchedMarks = [
    ...named(rising, lastIs('pulse lost', rising.length)),
    ...(openedAtMs === undefined ? [] : [OPENED]),
    ...named(
      falling,
      method === 'palpation'
        ? firstIs('pulse back', falling.length)
        : marksOf(falling.length, openedAtMs !== undefined),
    ),
  ];
  const read = readBack(touchedMarks, false, { measuredAt, inflatedAt, fields, method });
  if (second === undefined || second.touches.length === 0) return read;
  const clocksWithinMs = Math.max(...second.touches.map(({ withinMs }) => withinMs));
  return { ...read, clocksWithinMs: Math.round(clocksWithinMs * 10) / 10 };
}

/** The screen was left while the cuff was let down: the numbers may still be known, the times are not. */
export function listeningBroken({ measuredAt, inflatedAt, fields = {} }: Listening): ReadingBack {
  return readBack([], true, { measuredAt, inflatedAt, fields, method: 'auscultation' });
}

/** One pulse is lost in a run, and one comes back: a touch beside it is a slip until somebody says what it was. */
function lastIs(what: MarkOf, count: number): readonly MarkOf[] {
  return Array.from({ length: count }, (_, at) => (at === count - 1 ? what : 'slip'));
}

function firstIs(what: MarkOf, count: number): readonly MarkOf[] {
  return Array.from({ length: count }, (_, at) => (at === 0 ? what : 'slip'));
}

/**
 * A reading by ear has a first and a last sound, one by feel a pulse that came back: what no touch was of has a place
 * without a time.
 */
function whole(marks: readonly Mark[], method: MarkedAs['method']): readonly Mark[] {
  const kept = marks.filter(({ atSeconds, typed }) => atSeconds !== null || typed !== '');
  const untimed = (what: MarkOf): Mark => ({ what, atSeconds: null, typed: '' });
  const has = (what: MarkOf) => kept.some((mark) => mark.what === what);
  if (method === 'palpation') return has('pulse back') ? kept : [...kept, untimed('pulse back')];
  const opened = kept.findLastIndex(({ what }) => what === 'peak') + 1;
  const first = has('first sound') ? [] : [untimed('first sound')];
  const last = has('last sound') ? [] : [untimed('last sound')];
  return [...kept.slice(0, opened), ...first, ...kept.slice(opened), ...last];
}

function readBack(
  touchedMarks: readonly Mark[],
  areTimesVoid: boolean,
  known: Pick<ReadingBack, 'measuredAt' | 'inflatedAt' | 'fields' | 'method'>,
): ReadingBack {
  const marks = whole(touchedMarks, known.method);
  return {
    at: 'reading',
    marks,
    areTimesVoid,
    reinflated: false,
    ...known,
    chosen: firstToRead(marks),
  };
}

/** The next sound that is not read yet, after the one that the gauge shows; null when all are. */
export function nextToRead({ marks, chosen }: ReadingBack): number | null {
  const open = marks.flatMap(({ what, typed }, at) =>
    what !== 'slip' && what !== 'peak' && typed.trim() === '' ? [at] : [],
  );
  return open.find((at) => at > chosen) ?? open.find((at) => at !== chosen) ?? null;
}

/** The same marks with one of them changed. */
export function withMark<Of extends MarkedAs>(marked: Of, at: number, change: Partial<Mark>): Of {
  return {
    ...marked,
    marks: marked.marks.map((mark, index) => (index === at ? { ...mark, ...change } : mark)),
  };
}

/** A touch was of something else than the order of the touches says. */
export function withWhat(reading: ReadingBack, at: number, what: MarkOf): ReadingBack {
  const marks = whole(withMark(reading, at, { what }).marks, reading.method);
  return { ...reading, marks, chosen: firstToRead(marks) };
}

/** The form of a reading, as marked so far. */
export function markedAs(marked: MarkedAs): MarkedAs {
  const { method, marks, areTimesVoid, clocksWithinMs, fields, reinflated } = marked;
  const clocks = clocksWithinMs === undefined ? {} : { clocksWithinMs };
  return { method, marks, areTimesVoid, ...clocks, fields, reinflated };
}

/** Who marked the times of a run, where a second person marked any of them; else null. */
export function markedByOf(
  { method, marks, clocksWithinMs }: MarkedAs,
  { peak, moments }: Run,
): RunMarkedBy | null {
  if (clocksWithinMs === undefined) return null;
  const byOf = (mark: Mark | undefined, isTimed: boolean) =>
    mark === undefined || !isTimed ? null : (mark.by ?? 'observer');
  const sounds = marks.filter(({ what }) => isMoment(what, method));
  const opened = marks.find(({ what, typed }) => what === 'peak' && typed.trim() !== '');
  const by = {
    peak: byOf(opened, peak !== null && peak.atSeconds !== null),
    moments: moments.map(({ atSeconds }, at) => byOf(sounds[at], atSeconds !== null)),
    clocksWithinMs,
  };
  return [by.peak, ...by.moments].includes('second-person') ? by : null;
}

/** Whether a mark is a moment of its run; by ear the pulse under the finger is known beside the sounds. */
export function isMoment(what: MarkOf, method: MarkedAs['method']): boolean {
  if (what === 'slip' || what === 'peak' || what === 'pulse lost') return false;
  return what !== 'pulse back' || method === 'palpation';
}

/**
 * A step of the gauge from where it stands, in mmHg on its graduation. A face that was not read yet steps from the moment
 * before, from which the needle fell, or from rest.
 */
export function stepped(
  { marks, chosen }: Pick<ReadingBack, 'marks' | 'chosen'>,
  steps: number,
  { stepMmHg, topMmHg }: { readonly stepMmHg: number; readonly topMmHg: number },
): number {
  const from = gaugeOf(marks[chosen]) ?? before(marks, chosen) ?? 0;
  const onMark = gaugeRead(from, stepMmHg, 'nearest');
  return Math.min(topMmHg, Math.max(0, onMark + steps * stepMmHg));
}

function before(marks: readonly Mark[], chosen: number): number | null {
  return (
    marks
      .slice(0, chosen)
      .map(gaugeOf)
      .findLast((value) => value !== null) ?? null
  );
}

/** The gauge of a mark, mmHg; null while it is not read, or for what is no number. */
export function gaugeOf(mark: Mark | undefined): number | null {
  const typed = mark?.typed.trim() ?? '';
  return /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : null;
}

/** A run, or what is wrong with each mark of it by its place; `run` is wrong with the whole. */
export type ReadMarks =
  | { readonly run: Run; readonly wrong: null }
  | { readonly run: null; readonly wrong: ReadonlyMap<number | 'run', Refusal> };

/**
 * Reads a marked run. A mark that is a slip is not of it; an opening of the valve whose gauge was not read leaves no peak.
 * What is wrong stands beside the mark that it is wrong with.
 */
export function readMarks(
  { method, marks, reinflated }: MarkedAs,
  around: RunAround,
  rules: DeflationRules,
): ReadMarks {
  const placed = marks.map((mark, at) => ({ ...mark, at }));
  const sounds = placed.filter(({ what }) => isMoment(what, method));
  const readOf = (of: MarkOf) => placed.find(({ what, typed }) => what === of && typed.trim() !== '');
  const [peak, lost] = [readOf('peak'), readOf('pulse lost')];
  const back = method === 'auscultation' ? readOf('pulse back') : undefined;
  const read = parseRun(
    {
      method,
      gaugeStepMmHg: rules.gaugeStepMmHg,
      pulsePerMinute: around.pulsePerMinute,
      palpated: {
        lostMmHg: lost?.typed.trim() ?? around.lostMmHg,
        backMmHg: back?.typed.trim() ?? null,
      },
      peak: peak === undefined ? null : { mmHg: peak.typed.trim(), atSeconds: peak.atSeconds },
      reinflated,
      moments: sounds.map(({ what, typed, atSeconds }) => ({
        what,
        mmHg: typed.trim() === '' ? null : typed.trim(),
        atSeconds,
      })),
    },
    rules,
  );
  if (read.ok) return { run: read.value, wrong: null };
  const wrong = new Map<number | 'run', Refusal>();
  for (const refused of read.refusals) {
    const at = /^\/moments\/(\d+)/.exec(refused.field)?.[1];
    const others = { '/peak': peak, '/palpated/lostMmHg': lost, '/palpated/backMmHg': back };
    const other = Object.entries(others).find(([field]) => refused.field.startsWith(field))?.[1];
    const place = at === undefined ? other?.at : sounds[Number(at)]?.at;
    const key = place ?? 'run';
    if (!wrong.has(key)) wrong.set(key, refused);
  }
  return { run: null, wrong };
}

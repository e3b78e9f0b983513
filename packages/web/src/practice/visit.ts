import {
  type Action,
  type Arranged,
  type Bladder,
  type Breath,
  type Circumstances,
  circumstancesAfter,
  FLAT_MMHG,
  type HeartSound,
  type Instrument,
  makePerson,
  noiseOf,
  type Person,
  pulseFullness,
  type Rig,
  type RigEvents,
  type RigSnapshot,
  type Scenario,
  type SoundEvent,
  startRig,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';

/** What a visit is made of: from it the whole of it is played again, to the last bit. */
export type VisitData = {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly circumstances: Circumstances;
  readonly instrument: Instrument;
  readonly actions: readonly Action[];
  /** How far it has gone. */
  readonly tick: number;
};

/** How the person sits and what is on the arm by now: as one came in, and what hands have changed since. */
export function nowOf({ circumstances, instrument, actions }: Omit<VisitData, 'scenario' | 'seed' | 'tick'>) {
  const last = actions.findLast((one) => one.kind === 'cuff');
  return {
    circumstances: actions.reduce(circumstancesAfter, circumstances),
    bladder: last?.kind === 'cuff' ? last.bladder : instrument.bladder,
    hasOtherGauge: actions.some(({ kind }) => kind === 'gauge'),
  };
}

/** Noise of the place by now, dB(A): less where quiet was asked for. */
export function noiseNow(visit: Omit<VisitData, 'seed' | 'tick'>): number {
  return noiseOf(visit.scenario, nowOf(visit).circumstances);
}

/** Whether a finger lies on the wrist by now. */
export function isFingerOn(actions: readonly Action[]): boolean {
  const last = actions.findLast((one) => one.kind === 'finger');
  return last?.kind === 'finger' && last.isOn;
}

/** Whether the chest piece lies at the apex by now. */
export function isAtApex(actions: readonly Action[]): boolean {
  const last = actions.findLast((one) => one.kind === 'apex' || one.kind === 'chest-piece');
  return last?.kind === 'apex' && last.isOn;
}

/** A movement of the hands that is not stamped yet. */
export type Movement = Action extends infer One ? (One extends Action ? Omit<One, 'tick'> : never) : never;

/** Played on in slices of this many ticks, so that a long visit is found again by the same steps however it was drawn. */
const MOST_AT_ONCE = 4 * TICKS_PER_SECOND;

/**
 * A visit to a simulated person under way: the rig, and the log of everything that hands did, each stamped with the tick
 * at which it was done. However fast it is drawn, the same log gives the same visit.
 */
export class Visit {
  private rig: Rig;
  private log: Action[] = [];
  /** Done and not yet met by the rig. */
  private coming: Action[] = [];
  private readonly scenario: Scenario;
  private readonly seed: number;
  readonly person: Person;
  private circumstances: Circumstances;
  private instrument: Instrument;

  /** Begins a visit, or goes on with one where it was. */
  constructor(data: VisitData) {
    this.scenario = data.scenario;
    this.seed = data.seed;
    this.person = makePerson(data.scenario, data.seed);
    this.circumstances = data.circumstances;
    this.instrument = data.instrument;
    this.log = [...data.actions];
    this.rig = this.played(data.tick);
  }

  get seconds(): number {
    return this.rig.seconds;
  }

  get tick(): number {
    return this.rig.tick;
  }

  /** Whether a cuff was pumped up in this visit. */
  get isInflated(): boolean {
    return this.rig.firstInflationSeconds !== null;
  }

  /** Whether the cuff is empty and no hand is pumping: only then is the person asked to sit otherwise. */
  get isFlat(): boolean {
    return this.rig.cuffMmHg < FLAT_MMHG && !this.rig.snapshot().isSqueezing;
  }

  /** How full the pulse of this person is under the fingers; 1 is usual. */
  get pulseFullness(): number {
    return pulseFullness(this.scenario.waveShape);
  }

  /** The breath at hand. */
  get breathing(): Breath {
    return this.rig.breathing;
  }

  snapshot(): RigSnapshot {
    return this.rig.snapshot();
  }

  data(): VisitData {
    const { scenario, seed, circumstances, instrument, log, tick } = this;
    return { scenario, seed, circumstances, instrument, actions: log, tick };
  }

  /** Does something at a second of the visit; what is already over is done now. Nothing is dropped. */
  act(movement: Movement, atSeconds: number): void {
    const last = this.log.at(-1)?.tick ?? 0;
    const tick = Math.max(this.rig.tick, last, Math.floor(atSeconds * TICKS_PER_SECOND));
    const action = { ...movement, tick } as Action;
    this.log.push(action);
    this.coming.push(action);
  }

  /** On to a second of the visit. Answers what was to be heard and felt on the way. */
  moveTo(seconds: number): RigEvents {
    const toTick = Math.floor(seconds * TICKS_PER_SECOND);
    if (toTick <= this.rig.tick) return { sounds: [], felt: [], heart: [] };
    const due = this.coming.filter(({ tick }) => tick < toTick);
    this.coming = this.coming.slice(due.length);
    return this.rig.advance(toTick, due);
  }

  /** The sounds that come within some seconds if the hands stay as they are. The visit itself stays where it is. */
  ahead(seconds: number): readonly (SoundEvent | HeartSound)[] {
    const { sounds, heart } = this.eventsAhead(seconds);
    return [...sounds, ...heart];
  }

  /** What comes within some seconds if the hands stay as they are, pulses under the finger among it. */
  eventsAhead(seconds: number): RigEvents {
    const toTick = this.rig.tick + Math.ceil(seconds * TICKS_PER_SECOND);
    return this.rig.copy().advance(toTick, this.coming);
  }

  /**
   * The person is asked to sit otherwise, or another cuff is put on. Before the cuff first goes up the visit is then as if
   * it had always been so; between two inflations it is so from that second on, and the log says when. Getting up and sitting
   * down are always of their second: the pressure goes by the minutes since.
   *
   * Errors: throws while the cuff is up.
   */
  arrange(arranged: Arranged, bladder: Bladder | null, atSeconds: number): void {
    if (!this.isFlat) throw new Error('The cuff is up: the person stays as they are');
    if (!this.isInflated) {
      const { posture, isSeatedAnew, ...always } = arranged;
      this.prepare(always, bladder === null ? {} : { bladder });
      if (posture !== undefined) this.act({ kind: 'arrange', posture }, atSeconds);
      if (isSeatedAnew === true) this.act({ kind: 'arrange', isSeatedAnew }, atSeconds);
      return;
    }
    if (Object.keys(arranged).length > 0) this.act({ kind: 'arrange', ...arranged }, atSeconds);
    if (bladder !== null) this.act({ kind: 'cuff', bladder }, atSeconds);
  }

  /**
   * Another gauge with its hose is taken, of which nothing is known but that it is sound; the log says when.
   *
   * Errors: throws while the cuff is up.
   */
  takeGauge(atSeconds: number): void {
    if (!this.isFlat) throw new Error('The cuff is up: its gauge stays on it');
    this.act({ kind: 'gauge' }, atSeconds);
  }

  /**
   * How the visit began, said otherwise: it is then as if it had always been so.
   *
   * Errors: throws once the cuff was pumped up.
   */
  prepare(circumstances: Partial<Circumstances>, instrument: Partial<Instrument> = {}): void {
    if (this.isInflated) throw new Error('The cuff was pumped up: how the visit began stays as it is');
    const { tick } = this.rig;
    this.circumstances = { ...this.circumstances, ...circumstances };
    this.instrument = { ...this.instrument, ...instrument };
    this.coming = [];
    this.rig = this.played(tick);
  }

  private played(toTick: number): Rig {
    const rig = startRig(this.person, this.circumstances, this.instrument);
    let next = 0;
    while (rig.tick < toTick) {
      const upTo = Math.min(toTick, rig.tick + MOST_AT_ONCE);
      const from = next;
      while (next < this.log.length && (this.log[next]?.tick ?? 0) < upTo) next += 1;
      rig.advance(upTo, this.log.slice(from, next));
    }
    this.coming = this.log.slice(next);
    return rig;
  }
}

export const BLADDERS = ['infant', 'child', 'small-adult', 'adult', 'large-adult', 'thigh'] as const;
export type Bladder = (typeof BLADDERS)[number];

/** The cuff, hose and gauge. */
export type Instrument = {
  readonly bladder: Bladder;
  readonly gauge: 'aneroid' | 'liquid-column';
  /** What the gauge shows with no pressure on it, mmHg. */
  readonly zeroOffsetMmHg: number;
  /** Share of the pressure shown too much, 0.01 is one percent. */
  readonly scaleError: number;
  /** The needle stays where it is until the pressure is further away than this. */
  readonly frictionMmHg: number;
  readonly leakMmHgPerMinute: number;
  /** How the valve's outflow grows with pressure: 0.5 a sharp hole to 1 a long needle. */
  readonly valveExponent: number;
};

/** The same with another gauge and its hose in place of these: it stands at zero, shows what there is, and holds the air. */
export function withAnotherGauge(instrument: Instrument): Instrument {
  return { ...instrument, zeroOffsetMmHg: 0, scaleError: 0, leakMmHgPerMinute: 0 };
}

/** A gauge that is right, a hose that holds, an adult cuff. */
export const SOUND_INSTRUMENT: Instrument = {
  bladder: 'adult',
  gauge: 'aneroid',
  zeroOffsetMmHg: 0,
  scaleError: 0,
  frictionMmHg: 0.5,
  leakMmHgPerMinute: 0,
  valveExponent: 0.75,
};

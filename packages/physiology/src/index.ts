export type { HeartSound } from './apex/heartSound.js';
export { heartSounds } from './apex/heartSounds.js';
export { arterialPressure, arterialTrace, wristPulse } from './artery/arterialPressure.js';
export type { Contour } from './artery/contour.js';
export { contourOf } from './artery/contour.js';
export type { ArterySite, WaveShape } from './artery/waveShape.js';
export { ARTERY_SITES, WAVE_SHAPES } from './artery/waveShape.js';
export { cuffOf } from './batch/fall.js';
export { letDown, newLetDownResult } from './batch/letDown.js';
export type { LetDownResult } from './batch/letDownResult.js';
export type { LetDownPlan, Stretch } from './batch/plan.js';
export { SoundLog } from './batch/soundLog.js';
export type { Breath } from './breathing/breath.js';
export { breaths, chestAt } from './breathing/breaths.js';
export type { Breathing, BreathingKind } from './breathing/pattern.js';
export { BREATHING_KINDS } from './breathing/pattern.js';
export { normalOf, normalWithin } from './chance/normal.js';
export { keyOf, STREAMS, type Stream, uniform, uniformOf } from './chance/uniform.js';
export type {
  ChestPiece,
  Circumstances,
  MeasuredBy,
  Posture,
  Preparation,
} from './circumstances/circumstances.js';
export { CHEST_PIECES, MEASURED_BY, POSTURES, PREPARATIONS, PROPER } from './circumstances/circumstances.js';
export { BLADDER_ARMS, bladderFor, sizeBias, sizesTooSmall } from './circumstances/cuffSize.js';
export { gaugeFor, gaugeLagSeconds } from './cuff/gauge.js';
export { strokeOf } from './cuff/hand.js';
export type { Bladder, Instrument } from './cuff/instrument.js';
export { BLADDERS, SOUND_INSTRUMENT, withAnotherGauge } from './cuff/instrument.js';
export { instrumentFor } from './cuff/instrumentFor.js';
export { cosineOfTurns, sineOfTurns } from './exact/circle.js';
export { exp, log, power } from './exact/exponential.js';
export { normalQuantile } from './exact/normalQuantile.js';
export { PHYSIOLOGY_FIGURES } from './figures.js';
export type { Beat } from './heart/beat.js';
export type { BeatStream } from './heart/beatStream.js';
export { beats } from './heart/beats.js';
export type { Rhythm, RhythmKind, Variation } from './heart/rhythm.js';
export { RHYTHM_KINDS, VARIATIONS } from './heart/rhythm.js';
export { MODEL, playsAlike } from './model.js';
export { feelingOf } from './person/feelingOf.js';
export { makePerson, movedTo } from './person/makePerson.js';
export type { Person } from './person/person.js';
export type { Action } from './rig/action.js';
export { type Arranged, circumstancesAfter } from './rig/arranged.js';
export type { Rig, RigEvents, RigSnapshot } from './rig/rig.js';
export { FLAT_MMHG, startRig } from './rig/rig.js';
export type { Simulation } from './rig/simulate.js';
export { simulate } from './rig/simulate.js';
export { TICK_SECONDS, TICKS_PER_SECOND } from './rig/tick.js';
export { BLANK } from './scenario/blank.js';
export { SCENARIO_LIMITS } from './scenario/limits.js';
export { parseScenario } from './scenario/parseScenario.js';
export { isUnwell, RED_FLAGS } from './scenario/redFlags.js';
export { REPORTS, type ReportCode, reportOf } from './scenario/report.js';
export type { Alerting, Gap, Levels, RedFlag, Scenario, Sex, Traits } from './scenario/scenario.js';
export { SCENARIO_SCHEMA } from './scenario/scenarioSchema.js';
export { SCENARIOS, scenarioOf } from './scenario/scenarios.js';
export { temperatureOf, thermometerPlace } from './scenario/temperatureOf.js';
export { backgroundThresholdDb } from './sound/backgroundThreshold.js';
export { isLoudInAnyRoom, noiseOf } from './sound/noiseOf.js';
export { pulseFullness } from './sound/pulseFullness.js';
export type { FeltPulse, Phase, SoundEvent } from './sound/soundEvent.js';
export type { Effect, EffectCode, Truth } from './truth/truth.js';
export { EFFECT_CODES } from './truth/truth.js';
export { truth } from './truth/truthAt.js';

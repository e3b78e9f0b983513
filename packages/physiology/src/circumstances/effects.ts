import type { Instrument } from '../cuff/instrument.js';
import type { Person } from '../person/person.js';
import type { Effect, EffectCode } from '../truth/truth.js';
import type { Circumstances } from './circumstances.js';
import { sizeBias, sizesTooSmall } from './cuffSize.js';
import { CIRCUMSTANCE_FIGURES as F } from './figures.js';

type Row = readonly [EffectCode, boolean, number, number];

/** What the preparation does to the person's own pressure all the while: one line a fault. */
export function preparationEffects(person: Person, circumstances: Circumstances): Effect[] {
  const other = person.scenario.leftArm;
  const rows: Row[] = [
    [
      'other-arm',
      circumstances.arm === 'left' && other !== null,
      (other?.systolic ?? 0) - person.scenario.systolic,
      (other?.diastolic ?? 0) - person.scenario.diastolic,
    ],
    ['talking', circumstances.isTalking, F.talkingSystolic.value, F.talkingDiastolic.value],
    ['legs-crossed', circumstances.hasLegsCrossed, F.legsSystolic.value, F.legsDiastolic.value],
    ['back-unsupported', circumstances.hasBackUnsupported, 0, F.backDiastolic.value],
    ['full-bladder', circumstances.hasFullBladder, F.bladderSystolic.value, F.bladderDiastolic.value],
    ['caffeine', circumstances.hadCaffeine, F.caffeineSystolic.value, F.caffeineDiastolic.value],
    ['nicotine', circumstances.hadNicotine, F.nicotineSystolic.value, F.nicotineDiastolic.value],
    ['cold', circumstances.isCold, F.coldSystolic.value, F.coldDiastolic.value],
    ['arm-muscles', circumstances.isArmUnsupported, F.muscleSystolic.value, F.muscleDiastolic.value],
  ];
  return lines('person', rows);
}

/** What the cuff gets to see of it wrongly. */
export function cuffEffects(person: Person, circumstances: Circumstances, instrument: Instrument): Effect[] {
  const high = F.hydrostaticMmHgPerCm.value * circumstances.armBelowHeartCm;
  const size = sizeBias(sizesTooSmall(person.scenario.armCm, instrument.bladder));
  const loose = sizeBias(1);
  return lines('cuff', [
    ['arm-height', high !== 0, high, high],
    ['cuff-size', size.systolic !== 0, size.systolic, size.diastolic],
    ['cuff-loose', circumstances.isCuffLoose, loose.systolic, loose.diastolic],
  ]);
}

/** What is heard wrongly of it. */
export function soundEffects(circumstances: Circumstances): Effect[] {
  const piece = circumstances.chestPiece;
  return lines('sound', [
    ['tight-sleeve', circumstances.hasTightSleeve, F.sleeveSystolic.value, 0],
    ['pressed-hard', piece === 'pressed-hard', 0, F.pressedDiastolic.value],
    ['under-cuff', piece === 'under-cuff', F.underCuffSystolic.value, F.underCuffDiastolic.value],
    ['congestion', circumstances.wasReinflated, 0, F.congestedDiastolic.value],
  ]);
}

function lines(actsOn: Effect['actsOn'], rows: readonly Row[]): Effect[] {
  return rows.flatMap(([code, applies, systolic, diastolic]) =>
    applies ? [{ code, actsOn, systolic, diastolic }] : [],
  );
}

/** Sum of effects. */
export function sumOf(effects: readonly Effect[]): { systolic: number; diastolic: number } {
  let systolic = 0;
  let diastolic = 0;
  for (const one of effects) {
    systolic += one.systolic;
    diastolic += one.diastolic;
  }
  return { systolic, diastolic };
}

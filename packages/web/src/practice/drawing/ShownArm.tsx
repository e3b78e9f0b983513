import type { Exercise, ShownStep } from '@evenfall/practice';
import { useCallback } from 'react';
import { useApp } from '../../app/context.js';
import type { RoomEngine } from '../engine.js';
import { CUFF_SCALE } from '../panels/cuffScale.js';
import { handsAt, useAt } from '../useShown.js';
import { ArmScene } from './ArmScene.js';
import { ChestClose } from './ChestClose.js';
import { looksOf } from './looks.js';
import { ARM, arteryY } from './placing.js';
import { WristClose } from './WristClose.js';

type ShownProps = {
  readonly engine: RoomEngine;
  readonly exercise: Exercise;
  /** The step at hand. */
  readonly code: ShownStep['code'];
};

type Hands = ReturnType<typeof handsAt>;
const keyOf = ({ isFeeling, isListening, isAtApex }: Hands) => `${isFeeling} ${isListening} ${isAtApex}`;

/** The arm of a demonstration: fingertips at the wrist while they feel (from close by while they count), the chest piece while it listens; at the apex the chest, and the wrist that another one feels. */
export function ShownArm({ engine, exercise, code }: ShownProps) {
  const { words } = useApp();
  const { scenario, seed, instrument } = exercise;
  const make = useCallback((seconds: number) => handsAt(exercise, seconds), [exercise]);
  const { isFeeling, isListening, isAtApex } = useAt(engine, make, keyOf);
  const looks = looksOf(scenario);
  if (code === 'breaths' || code === 'breaths-counted')
    return <ChestClose engine={engine} looks={looks} pieceAt={null} />;
  if (isAtApex) {
    return (
      <div className="shown-apex">
        <ChestClose engine={engine} looks={looks} pieceAt="apex" />
        <WristClose engine={engine} looks={looks} />
      </div>
    );
  }
  // While it is counted the pulse is seen to swell: whoever looks on counts along.
  if (code === 'pulse' && isFeeling) {
    return (
      <div className="shown-wrist">
        <WristClose engine={engine} looks={looks} />
      </div>
    );
  }
  return (
    <ArmScene
      engine={engine}
      seed={seed}
      looks={looks}
      armCm={scenario.armCm}
      isCuffOn={code !== 'measured' && code !== 'pulse' && code !== 'pulse-counted'}
      cuffScale={CUFF_SCALE[instrument.bladder]}
      hasTape={code === 'measured'}
      inHand="chest-piece"
      laid={isListening ? { x: ARM.elbowX + 8, y: arteryY(seed), isPressed: false } : null}
      laidText={words.sentence('practice.pieceOn')}
      isFeelingWrist={isFeeling}
    />
  );
}

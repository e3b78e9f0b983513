import type { Scenario } from '@evenfall/physiology';
import { useEffect, useState } from 'react';
import { useApp } from '../../app/context.js';
import { ArmScene } from '../drawing/ArmScene.js';
import { looksOf } from '../drawing/looks.js';
import { ARM, arteryY } from '../drawing/placing.js';
import type { Ears } from '../ears.js';
import { LiveGauge } from '../LiveGauge.js';
import { SoundStrip } from '../SoundStrip.js';
import { useSound } from '../sound.js';
import { useShown } from '../useShown.js';
import { CUFF_SCALE } from './cuffScale.js';

type ShowProps = {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly ears: Ears;
  readonly onEnd: () => void;
};

/** How it is done, in the same drawing: the finger at the wrist first, then the chest piece, and an even fall. */
export function ShowPanel({ scenario, seed, ears, onEnd }: ShowProps) {
  const { words } = useApp();
  const say = words.sentence;
  const { exercise, engine, isPlaying, play, stop } = useShown(scenario, seed);
  const sound = useSound(engine, {
    seed,
    aids: ears.aids,
    noiseDbA: scenario.noiseDbA > 45 ? scenario.noiseDbA : null,
  });
  const [isFeeling, setFeeling] = useState(false);
  useEffect(() => {
    window.scrollTo(0, 0);
    play();
  }, [play]);
  useEffect(() => {
    const moves = exercise.actions.filter((one) => one.kind === 'finger');
    let was = false;
    return engine.subscribe(({ now }) => {
      const last = moves.findLast(({ tick }) => tick <= now.tick);
      const is = last?.isOn ?? false;
      if (is !== was) setFeeling(is);
      was = is;
    });
  }, [engine, exercise]);
  const { entered } = exercise;
  return (
    <div className="room room-shown" data-view="arm">
      <p className="room-lead" role="status">
        {say('practice.showing')}
      </p>
      <div className="room-scene">
        <ArmScene
          engine={engine}
          seed={seed}
          looks={looksOf(scenario, seed)}
          armCm={scenario.armCm}
          isCuffOn
          cuffScale={CUFF_SCALE[exercise.instrument.bladder]}
          hasTape={false}
          inHand="chest-piece"
          laid={isFeeling ? null : { x: ARM.elbowX + 8, y: arteryY(seed), isPressed: false }}
          laidText={say('practice.pieceOn')}
          isFeelingWrist={isFeeling}
        />
        {isPlaying || entered.systolic === null ? null : (
          <p className="entered-large">
            {[entered.systolic, entered.muffled, entered.diastolic].filter((one) => one !== null).join('/')}{' '}
            <span className="small soft">{words.sentence('pressure.mmHg')}</span>
          </p>
        )}
      </div>
      <div className="room-hands">
        <div className="room-gauge">
          <LiveGauge engine={engine} />
        </div>
        <SoundStrip engine={engine} noiseDbA={scenario.noiseDbA} />
      </div>
      <div className="room-next">
        <button type="button" className="button" onClick={isPlaying ? stop : play}>
          {say(isPlaying ? 'practice.stop' : 'practice.goOnNow')}
        </button>
        {sound.isOn ? null : (
          <button type="button" className="button" onClick={() => void sound.turnOn()}>
            {say('practice.soundOn')}
          </button>
        )}
        <button type="button" className="button button-first" onClick={onEnd}>
          {say('practice.showEnd')}
        </button>
      </div>
    </div>
  );
}

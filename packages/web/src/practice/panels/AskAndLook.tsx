import type { Arranged, Circumstances, Scenario } from '@evenfall/physiology';
import { useState } from 'react';
import { useApp } from '../../app/context.js';
import { type Asked, answerTo, askedIn } from '../asked.js';
import { Tool } from './Tool.js';

type AskProps = {
  readonly view: 'person' | 'arm';
  readonly circumstances: Circumstances;
  readonly place: Pick<Scenario, 'noiseDbA'>;
  readonly isCuffOn: boolean;
  /** Puts something right; absent while the cuff is up. */
  readonly onArrange: ((change: Arranged) => void) | undefined;
};

/** What is not seen at once: asked, looked at or felt it is said in words, and can then be put right. */
export function AskAndLook({ view, circumstances, place, isCuffOn, onArrange }: AskProps) {
  const { words } = useApp();
  const say = words.sentence;
  const [asked, setAsked] = useState<Asked | null>(null);
  const all = askedIn(view, isCuffOn);
  const shown = asked !== null && all.includes(asked) ? asked : null;
  const answer = shown === null ? null : answerTo(shown, circumstances, place);
  return (
    <div className="room-asked">
      <div className="room-tools">
        {all.map((one) => (
          <Tool
            key={one}
            text={say(`practice.ask-${one}`)}
            isOn={shown === one}
            onUse={() => setAsked(shown === one ? null : one)}
          />
        ))}
        {shown === null || answer === null || answer.mend === null || onArrange === undefined ? null : (
          <button type="button" className="room-tool" onClick={() => onArrange(answer.mend as Arranged)}>
            {say(`practice.mend-${shown}`)}
          </button>
        )}
      </div>
      <p className="small" role="status">
        {shown === null || answer === null
          ? null
          : answer.found.length === 0
            ? say(
                shown === 'noise' && circumstances.isQuieter
                  ? 'practice.fine-noiseMoved'
                  : `practice.fine-${shown}`,
              )
            : answer.found.map((one) => say(`practice.found-${one}`)).join(' ')}
      </p>
    </div>
  );
}

import { CHECK_LEVELS_DB } from '@evenfall/physiology/audio';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../../app/context.js';
import { Choices } from '../../parts/Choices.js';
import { LOUDNESS } from '../audio/index.js';
import { type Ears, thresholdOf } from '../ears.js';
import { hasSoundHere, loudnessNow, openCard, playCheck, setLoudness } from '../sound.js';

type EarsProps = {
  readonly ears: Ears;
  /** What is done at the end. */
  readonly done: string;
  readonly onDone: (ears: Ears) => void;
};

/** Before the first exercise: start low, three taps, which were heard; what helps the ear is said and is no fault. */
export function EarsPanel({ ears, done, onDone }: EarsProps) {
  const { words } = useApp();
  const say = words.sentence;
  const [now, setNow] = useState(ears);
  const [heard, setHeard] = useState<number | null>(null);
  const [hasPlayed, setPlayed] = useState(false);
  const [plays, setPlays] = useState(false);
  const over = useRef<number | undefined>(undefined);
  const [isMute, setMute] = useState(!hasSoundHere());
  const [share, setShare] = useState(loudnessNow());
  const aid = (key: 'hasHearingAid' | 'isAmplified' | 'isLoudspeakerVoice') => (isOn: boolean) =>
    setNow((was) => ({ ...was, aids: { ...was.aids, [key]: isOn } }));
  const play = async () => {
    const card = await openCard();
    setMute(card === null);
    if (card === null) return;
    setPlayed(true);
    setHeard(null);
    setPlays(true);
    window.clearTimeout(over.current);
    over.current = window.setTimeout(
      () => setPlays(false),
      playCheck(card, now.aids.isLoudspeakerVoice) * 1000,
    );
  };
  useEffect(() => () => window.clearTimeout(over.current), []);
  const comeIn = async () => {
    const card = isMute ? null : await openCard();
    const hadSound = card !== null;
    onDone({
      ...now,
      showsSounds: now.showsSounds || !hadSound,
      thresholdDb: heard === null ? now.thresholdDb : thresholdOf(heard, CHECK_LEVELS_DB),
      aids: { ...now.aids, hadSound },
    });
  };
  return (
    <section className="ears form" aria-label={say('practice.earsTitle')}>
      <h2>{say('practice.earsTitle')}</h2>
      <p>{say('practice.earsLead')}</p>
      <p className="notice">{say('practice.startLow')}</p>
      {isMute ? <p role="status">{say('practice.noSoundHere')}</p> : null}
      <Loudness
        share={share}
        onChange={(next) => {
          setLoudness(next);
          setShare(next);
        }}
      />
      <button type="button" className="button" onClick={() => void play()}>
        {say('practice.playTaps')}
      </button>
      <p className="small soft" role="status">
        {plays ? say('practice.tapsPlay') : null}
      </p>
      {hasPlayed ? (
        <Choices
          legend={say('practice.whichHeard')}
          choices={([0, 1, 2, 3] as const).map((taps) => ({
            id: String(taps),
            text: say(`practice.heard${taps}`),
          }))}
          chosen={heard === null ? null : String(heard)}
          onChoose={(taps) => setHeard(Number(taps))}
        />
      ) : null}
      {heard === null ? null : (
        <p className={heard === 3 ? 'ticked' : 'notice'} role="status">
          {say(answerTo(heard, share))}
        </p>
      )}
      <fieldset className="choices">
        <legend>{say('practice.helps')}</legend>
        <Tick text={say('practice.hearingAid')} isOn={now.aids.hasHearingAid} onTick={aid('hasHearingAid')} />
        <Tick text={say('practice.amplified')} isOn={now.aids.isAmplified} onTick={aid('isAmplified')} />
        <Tick
          text={say('practice.loudspeaker')}
          isOn={now.aids.isLoudspeakerVoice}
          onTick={aid('isLoudspeakerVoice')}
        />
        <Tick
          text={say('practice.showSounds')}
          isOn={now.showsSounds}
          onTick={(showsSounds) => setNow((was) => ({ ...was, showsSounds }))}
        />
        <Tick
          text={say('practice.hearPulse')}
          isOn={now.hearsPulse ?? false}
          onTick={(hearsPulse) => setNow((was) => ({ ...was, hearsPulse }))}
        />
      </fieldset>
      <button type="button" className="button button-first button-large" onClick={() => void comeIn()}>
        {heard === null && now.thresholdDb === null ? say('practice.comeIn') : done}
      </button>
    </section>
  );
}

/** What is said to how many of the three taps were heard. */
function answerTo(heard: number, share: number) {
  if (heard === 3) return 'practice.heardAll' as const;
  if (share >= LOUDNESS.warnFrom) return 'practice.showInstead' as const;
  return heard === 2 ? 'practice.heardTwo' : heard === 1 ? 'practice.turnUp' : 'practice.heardNone';
}

/** How loud it is, with a warning where it is loud for headphones. */
export function Loudness({
  share,
  onChange,
}: {
  readonly share: number;
  readonly onChange: (share: number) => void;
}) {
  const { words } = useApp();
  return (
    <div className="loudness">
      <label>
        <span>{words.sentence('practice.loudness')}</span>
        <input
          type="range"
          min={0}
          max={100}
          step={1}
          value={Math.round(share * 100)}
          onChange={(event) => onChange(Number(event.target.value) / 100)}
        />
      </label>
      {share >= LOUDNESS.warnFrom ? (
        <p className="small" role="status">
          {words.sentence('practice.loudWarn')}
        </p>
      ) : null}
    </div>
  );
}

/** A switch of what is heard or shown. */
export function Tick(props: {
  readonly text: string;
  readonly isOn: boolean;
  readonly onTick: (isOn: boolean) => void;
}) {
  return (
    <label className="tick">
      <input type="checkbox" checked={props.isOn} onChange={(event) => props.onTick(event.target.checked)} />
      <span>{props.text}</span>
    </label>
  );
}

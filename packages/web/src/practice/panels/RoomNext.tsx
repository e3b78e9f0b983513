import { NOTHING_CHOSEN } from '@evenfall/record';
import { useApp, useKept } from '../../app/context.js';
import { exerciseOf } from '../exerciseOf.js';
import type { PracticeDraft } from '../keptPractice.js';
import { hasNewFall, readingsOf } from '../readingsOf.js';
import type { Change } from '../usePractice.js';
import { isAtApex } from '../visit.js';
import { Thermometer } from './Thermometer.js';

type NextProps = {
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly isStopped: boolean;
  /** Why nothing was written by feel. */
  readonly refused: 'practice.noFinger' | 'practice.noFingerUp' | 'practice.notFelt' | null;
  readonly onCount: (sign: 'pulse' | 'apex' | 'breaths') => void;
  readonly onWrite: (method: 'auscultation' | 'palpation') => void;
  /** Where the pulse was lost on the way up is written down. */
  readonly onEstimate: () => void;
  /** Null where the visit is at its end. */
  readonly onStop: (() => void) | null;
  readonly onDone: () => void;
};

/** What can be taken and written down, and what was so far. */
export function RoomNext(props: NextProps) {
  const { draft, change, isStopped, refused, onCount, onWrite, onEstimate, onStop, onDone } = props;
  const { words } = useApp();
  const say = words.sentence;
  const { entered } = exerciseOf(draft, useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN);
  const { pulsePerMinute, apexPerMinute = null, breathsPerMinute } = entered;
  const readings = readingsOf(draft);
  const written = [
    pulsePerMinute === null ? null : `${say('practice.pulse')} ${words.say.rate(pulsePerMinute)}`,
    apexPerMinute === null ? null : `${say('practice.apex')} ${words.say.rate(apexPerMinute)}`,
    breathsPerMinute === null ? null : `${say('practice.breaths')} ${words.say.rate(breathsPerMinute)}`,
    (entered.temperatureC ?? null) === null
      ? null
      : say('counts.temperatureWritten', { celsius: entered.temperatureC ?? 0 }),
    ...draft.round.pressure.felt.map(({ lostMmHg }) => say('practice.feltLost', { mmHg: lostMmHg })),
    ...readings.map(({ text }) => text),
  ].filter((one) => one !== null);
  const isNew = hasNewFall(draft);
  const isReady = readings.length > 0 && !isNew;
  return (
    <section className="room-next" aria-label={say('practice.whatNext')}>
      <p className="room-written" role="status">
        {written.length === 0
          ? say('practice.nothingWritten')
          : say('practice.written', { text: written.join(' · ') })}
      </p>
      <button type="button" className="button" onClick={() => onCount('pulse')}>
        {say('practice.countPulse')}
      </button>
      {isAtApex(draft.visit.actions) ? (
        <button type="button" className="button" onClick={() => onCount('apex')}>
          {say('practice.countApex')}
        </button>
      ) : null}
      <button type="button" className="button" onClick={() => onCount('breaths')}>
        {say('practice.countBreaths')}
      </button>
      <Thermometer draft={draft} change={change} />
      <button type="button" className="button room-by-feel" onClick={onEstimate}>
        {say('practice.writeLost')}
      </button>
      <button type="button" className="button room-by-feel room-felt" onClick={() => onWrite('palpation')}>
        {say('practice.writeFelt')}
      </button>
      <button
        type="button"
        className={isNew ? 'button button-first room-write' : 'button room-write'}
        onClick={() => onWrite('auscultation')}
      >
        {say('practice.write')}
      </button>
      {onStop === null ? null : (
        <button type="button" className="button room-stop" onClick={onStop}>
          {say(isStopped ? 'practice.goOnNow' : 'practice.stop')}
        </button>
      )}
      <button
        type="button"
        className={isReady ? 'button button-first room-finish' : 'button room-finish'}
        onClick={onDone}
      >
        {say('practice.finish')}
      </button>
      {refused === null ? null : (
        <p className="notice room-refused" role="alert">
          {say(refused)}
        </p>
      )}
    </section>
  );
}

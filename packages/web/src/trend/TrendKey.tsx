import type { TrendRound, TrendValue } from '@evenfall/record';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { isUpOrLying } from './bands.js';
import { Mark } from './Mark.js';

const AT = 10;
const PLACE = { isAveraged: true, written: '', side: null, posture: null } as const;

/** How a trend is drawn, for what it draws. */
export function TrendKey({ rounds }: { readonly rounds: readonly TrendRound[] }) {
  const { words } = useApp();
  const taken = rounds.filter(({ elsewhere }) => elsewhere === null);
  const values = taken.flatMap(({ points }) => points.map(({ value }) => value));
  const has = (is: (value: TrendValue) => boolean) => values.some(is);
  const hasPressure = has(({ of }) => of === 'pressure');
  const isFelt = (value: TrendValue) => value.of === 'pressure' && value.diastolic === null;
  const isOther =
    has((value) => value.of === 'pressure' && !value.isAveraged) ||
    rounds.some(({ points }) =>
      points.some(({ isContested, failedGauge }) => isContested || failedGauge !== null),
    );
  return (
    <ul className="trend-key" aria-label={words.sentence('trend.key')}>
      {hasPressure ? (
        <Sample text={`${words.sentence('trend.keySystolic')} – ${words.sentence('trend.keyDiastolic')}`}>
          <Mark value={pressure(1, 0)} x={AT} y={tall} weight="plain" isDoubtful={false} />
        </Sample>
      ) : null}
      {has(isFelt) ? (
        <Sample text={words.sentence('trend.keyFelt')}>
          <Mark value={pressure(1, null)} x={AT} y={tall} weight="plain" isDoubtful={false} />
        </Sample>
      ) : null}
      {(['stand', 'lie'] as const).map((posture) =>
        has((value) => isUpOrLying(value) && (value.posture === 'stand') === (posture === 'stand')) ? (
          <Sample key={posture} text={words.sentence(`trend.key-${posture}`)}>
            <Mark value={{ ...pressure(1, 0), posture }} x={AT} y={short} weight="plain" isDoubtful={false} />
          </Sample>
        ) : null,
      )}
      {rounds.some(({ average, isNotReliedOn }) => average !== null && !isNotReliedOn) ? (
        <Sample text={words.sentence('trend.keyAverage')}>
          <Mark value={pressure(1, 0)} x={AT} y={tall} weight="bold" isDoubtful={false} />
        </Sample>
      ) : null}
      {rounds.some(({ isNotReliedOn }) => isNotReliedOn) ? (
        <Sample text={words.sentence('trend.keyNotReliedOn')}>
          <Mark value={pressure(1, 0)} x={AT} y={tall} weight="thin" isDoubtful={false} isStruck />
        </Sample>
      ) : null}
      {isOther ? (
        <Sample text={words.sentence('trend.keyOther')}>
          <Mark value={pressure(1, 0)} x={AT} y={tall} weight="plain" isDoubtful={true} />
        </Sample>
      ) : null}
      {taken.length === rounds.length ? null : (
        <Sample text={words.sentence('trend.keyElsewhere')}>
          <Mark value={pressure(1, null)} x={AT} y={() => 18} weight="plain" isDoubtful={false} isElsewhere />
        </Sample>
      )}
      {has(({ of }) => of === 'pulse') ? (
        <Sample text={words.sentence('trend.keyPulse')}>
          <Mark value={{ of: 'pulse', perMinute: 0 }} x={AT} y={() => 13} weight="plain" isDoubtful={false} />
        </Sample>
      ) : null}
    </ul>
  );
}

function Sample({ text, children }: { readonly text: string; readonly children: ReactNode }) {
  return (
    <li>
      <svg viewBox="0 0 20 26" aria-hidden="true">
        {children}
      </svg>
      {text}
    </li>
  );
}

function pressure(systolic: number, diastolic: number | null): TrendValue & { readonly of: 'pressure' } {
  return { of: 'pressure', systolic, diastolic, ...PLACE };
}

/** A sample from high to low. */
function tall(number: number): number {
  return number === 1 ? 9 : 17;
}

/** The same with room for a mark under it. */
function short(number: number): number {
  return number === 1 ? 8 : 9;
}

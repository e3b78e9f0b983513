import type { Words } from '@evenfall/words';
import { restText } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { type RestDraft, restOf } from './restDraft.js';
import { useRest } from './useRest.js';
import type { Round } from './useRound.js';

type RestLineProps = {
  readonly round: Round;
  /** Without words, where a text that changes would disturb a count. */
  readonly isQuiet?: boolean;
  /** Where the page itself shows it, large. */
  readonly isElsewhere?: boolean;
};

/** The rest before the pressure, in one calm line on every page of a round, until a pressure is in. */
export function RestLine({ round, isQuiet = false, isElsewhere = false }: RestLineProps) {
  const { words } = useApp();
  const seconds = useRest(round);
  const { rest, pressure } = round.draft;
  if (isElsewhere || rest === null || seconds === null || pressure.values.length > 0) return null;
  return (
    <p className="rest-line small">
      <RestFace seconds={seconds} neededSeconds={rest.neededSeconds} />
      <span className={isQuiet ? 'unseen' : undefined}>{lineText(rest, seconds, words)}</span>
    </p>
  );
}

function lineText(rest: RestDraft, seconds: number, words: Words): string {
  const over = restOf(rest);
  if (over !== null) return restText(over, words);
  return leftText(rest.neededSeconds - seconds, words);
}

/** How much of a rest is left, in minutes: seconds would only make somebody watch them. */
export function leftText(leftSeconds: number, words: Words): string {
  return leftSeconds <= 60
    ? words.sentence('rest.lastMinute')
    : words.sentence('rest.left', { minutes: Math.ceil(leftSeconds / 60) });
}

type FaceProps = { readonly seconds: number; readonly neededSeconds: number };

/** A face that fills once while the person rests. Our own; beside it stands what it says. */
export function RestFace({ seconds, neededSeconds }: FaceProps) {
  const share = Math.min(1, seconds / neededSeconds);
  const angle = share * 2 * Math.PI;
  const x = Math.round(5000 + 4400 * Math.sin(angle)) / 100;
  const y = Math.round(5000 - 4400 * Math.cos(angle)) / 100;
  const sweep = `M50 50 V6 A44 44 0 ${share > 0.5 ? 1 : 0} 1 ${x} ${y} Z`;
  return (
    <svg className="rest-face" viewBox="0 0 100 100" aria-hidden="true">
      <circle className="rest-rim" cx="50" cy="50" r="46" />
      {share === 1 ? (
        <circle className="rest-swept" cx="50" cy="50" r="44" />
      ) : (
        <path className="rest-swept" d={sweep} />
      )}
    </svg>
  );
}

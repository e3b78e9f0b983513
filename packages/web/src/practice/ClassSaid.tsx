import { useState } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { type HeldAgainst, saidOff } from './heldAgainst.js';
import { parseSaid, type Said } from './said.js';

type SaidProps = {
  readonly said: readonly Said[];
  readonly onSaid: (said: readonly Said[]) => void;
  /** Null as long as it is hidden. */
  readonly held: HeldAgainst | null;
};

/**
 * What was said in the room is held until what was to be had stands beside it, the last first. The field stays in its place however
 * much was said. It is of nobody, and kept nowhere.
 */
export function ClassSaid({ said, onSaid, held }: SaidProps) {
  const { words } = useApp();
  const say = words.sentence;
  const [text, setText] = useState('');
  const [isWrong, setWrong] = useState(false);
  return (
    <form
      className="class-said"
      aria-label={say('showing.classSaid')}
      onSubmit={(event) => {
        event.preventDefault();
        const one = parseSaid(text);
        setWrong(one === null);
        if (one === null) return;
        onSaid([...said, one]);
        setText('');
      }}
    >
      <h3 className="unseen">{say('showing.classSaid')}</h3>
      <div className="class-said-more">
        <Field label={say('showing.classSays')} wrong={isWrong ? say('showing.saidWrong') : null}>
          {(control) => (
            <input
              {...control}
              type="text"
              inputMode="text"
              autoComplete="off"
              className="short-input"
              maxLength={9}
              value={text}
              onChange={(event) => setText(event.target.value)}
            />
          )}
        </Field>
        <button type="submit" className="button">
          {say('showing.holdIt')}
        </button>
      </div>
      {said.length === 0 ? null : (
        <ul>
          {said
            .map((one, at) => ({ one, at }))
            .toReversed()
            .map(({ one, at }) => (
              <li key={at}>
                <span className="class-said-one">{say('showing.saidOne', one)}</span>
                {held === null ? null : <span>{say('showing.saidOff', saidOff(one, held))}</span>}
                <button
                  type="button"
                  className="button button-quiet"
                  aria-label={`${say('showing.forget')}: ${say('showing.saidOne', one)}`}
                  onClick={() => onSaid(said.filter((_, other) => other !== at))}
                >
                  {say('showing.forget')}
                </button>
              </li>
            ))}
        </ul>
      )}
    </form>
  );
}

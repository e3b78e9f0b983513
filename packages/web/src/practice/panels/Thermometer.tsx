import { temperatureOf, thermometerPlace } from '@evenfall/physiology';
import { EXERCISE_LIMITS } from '@evenfall/practice';
import { type FormEvent, useState } from 'react';
import { useApp } from '../../app/context.js';
import { Field } from '../../parts/Field.js';
import type { PracticeDraft } from '../keptPractice.js';
import { temperatureTyped } from '../temperatureTyped.js';
import type { Change } from '../usePractice.js';

/** The thermometer, taken up and read; what it shows is written down by hand, as at the bedside. */
export function Thermometer({ draft, change }: { readonly draft: PracticeDraft; readonly change: Change }) {
  const { words } = useApp();
  const say = words.sentence;
  const [isOut, setOut] = useState(false);
  const [text, setText] = useState('');
  const [isWrong, setWrong] = useState(false);
  const { manner } = words.say;
  const celsius = temperatureOf(draft.visit.scenario);
  const write = (event: FormEvent) => {
    event.preventDefault();
    const temperatureC = temperatureTyped(text, manner);
    setWrong(temperatureC === null);
    if (temperatureC === null) return;
    change((was) => ({ ...was, temperatureC }));
    setText('');
    setOut(false);
  };
  if (!isOut)
    return (
      <button type="button" className="button" onClick={() => setOut(true)}>
        {say('counts.takeTemperature')}
      </button>
    );
  const [minimum, maximum] = EXERCISE_LIMITS.celsius;
  return (
    <form className="room-thermometer" onSubmit={write} noValidate>
      <p role="status">
        {say('counts.thermometerShows', { celsius, place: thermometerPlace(draft.visit.scenario) })}
      </p>
      <Field
        label={say(`signs.${manner.temperature}`)}
        wrong={isWrong ? say('counts.temperatureWrong', { minimum, maximum }) : null}
      >
        {(control) => (
          <input
            {...control}
            inputMode="decimal"
            autoComplete="off"
            value={text}
            onChange={({ target }) => setText(target.value)}
          />
        )}
      </Field>
      <div className="buttons">
        <button type="submit" className="button button-first">
          {say('counts.writeTemperature')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setOut(false)}>
          {say('counts.putThermometerAway')}
        </button>
      </div>
    </form>
  );
}

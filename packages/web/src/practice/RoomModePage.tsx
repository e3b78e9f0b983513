import { SCENARIOS, type Scenario } from '@evenfall/physiology';
import { useMemo, useState } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { useOwnScenarios } from '../scenarios/ownScenarios.js';
import { LetterKeys } from './LetterKeys.js';
import { Projected } from './Projected.js';
import { scenarioTitle, whoText } from './scenarioText.js';
import { openCard } from './sound.js';
import { personName } from './whoComesIn.js';

/** Somebody whom nobody knows before the truth is shown. */
const BY_CHANCE = '';

/** One laptop, a projector and no phones: a large gauge and the sound for all; the teacher stops, asks, reveals, replays. */
export function RoomModePage() {
  const { words } = useApp();
  const say = words.sentence;
  const [chosen, setChosen] = useState<{ readonly scenario: Scenario; readonly seed: number } | null>(null);
  const [id, setId] = useState<string>(SCENARIOS[0]?.id ?? BY_CHANCE);
  // The class sees what is chosen: what a person teaches is named only where a hand asks for it.
  const [namesLessons, setNamesLessons] = useState(false);
  const own = useOwnScenarios().asked.value;
  const all = useMemo(() => [...SCENARIOS, ...(own ?? [])], [own]);
  const begin = async () => {
    // Opened by this touch, for a page may not begin to sound by itself.
    await openCard();
    const [seed = 1, chance = 0] = crypto.getRandomValues(new Uint32Array(2));
    const found = id === BY_CHANCE ? all[chance % all.length] : all.find((one) => one.id === id);
    if (found !== undefined) setChosen({ scenario: found, seed });
  };
  const back = { href: '/practice', text: say('practice.title') };
  const option = (one: Scenario) => (
    <option key={one.id} value={one.id}>
      {[
        ...new Set([
          ...(namesLessons ? [scenarioTitle(one, words)] : []),
          personName(one),
          whoText(one, words),
        ]),
      ].join(' · ')}
    </option>
  );
  return (
    <SimulatedPage title={say('practice.roomTitle')} back={back} isBare isWide>
      {chosen === null ? (
        <form
          className="form ears"
          onSubmit={(event) => {
            event.preventDefault();
            void begin();
          }}
        >
          <p>{say('practice.roomLead')}</p>
          <p className="notice">{say('practice.startLow')}</p>
          <Field label={say('practice.roomWho')}>
            {(control) => (
              <select {...control} value={id} onChange={(event) => setId(event.target.value)}>
                <option value={BY_CHANCE}>{say('showing.byChance')}</option>
                {SCENARIOS.map(option)}
                {own === null || own === undefined || own.length === 0 ? null : (
                  <optgroup label={say('practice.ofOurOwn')}>{own.map(option)}</optgroup>
                )}
              </select>
            )}
          </Field>
          <label className="tick small">
            <input
              type="checkbox"
              checked={namesLessons}
              onChange={({ target }) => setNamesLessons(target.checked)}
            />
            <span>{say('practice.nameLessons')}</span>
          </label>
          <p className="small soft">{say('practice.roomKeys')}</p>
          <LetterKeys />
          <button type="submit" className="button button-first button-large">
            {say('practice.roomBegin')}
          </button>
        </form>
      ) : (
        <Projected key={chosen.seed} {...chosen} onAnother={() => setChosen(null)} />
      )}
    </SimulatedPage>
  );
}

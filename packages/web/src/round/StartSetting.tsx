import type { CountClock, CountFirst } from '@evenfall/clinical';
import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';

type StartSettingProps = { readonly startsOn: CountClock; readonly first: CountFirst };

const SAYS = {
  beat0: 'count.isBeat0',
  beat1: 'count.isBeat1',
  any0: 'count.isAny0',
  any1: 'count.isAny1',
} as const;

/** What each way does to a rate on average. */
const OFF = {
  beat0: 'count.offBeat0',
  beat1: 'count.offBeat1',
  any0: 'count.offAny0',
  any1: 'count.offAny1',
} as const;

/** How the clock starts and what the first one is called: said always, changed rarely, kept on this device. */
export function StartSetting({ startsOn, first }: StartSettingProps) {
  const { store, words } = useApp();
  const cue = useKept(({ kept }) => kept.cue ?? 'silent');
  const set = (start: { clock: CountClock; first: CountFirst }) =>
    store.change((state) => ({ ...state, kept: { ...state.kept, start } }));
  return (
    <details className="start-setting">
      <summary>{words.sentence(SAYS[`${startsOn}${first}`])}</summary>
      <div className="start-choices">
        <Choices
          legend={words.sentence('count.clock')}
          choices={[
            { id: 'any', text: words.sentence('count.clockAny') },
            { id: 'beat', text: words.sentence('count.clockBeat') },
          ]}
          chosen={startsOn}
          onChoose={(clock) => set({ clock, first })}
        />
        <Choices
          legend={words.sentence('count.first')}
          choices={[
            { id: '0', text: words.sentence('count.firstZero') },
            { id: '1', text: words.sentence('count.firstOne') },
          ]}
          chosen={first === 0 ? '0' : '1'}
          onChoose={(one) => set({ clock: startsOn, first: one === '0' ? 0 : 1 })}
        />
        <Choices
          legend={words.sentence('count.cue')}
          choices={[
            { id: 'silent', text: words.sentence('count.silent') },
            { id: 'tick', text: words.sentence('count.tick') },
          ]}
          chosen={cue}
          onChoose={(chosen) => store.change((state) => ({ ...state, kept: { ...state.kept, cue: chosen } }))}
        />
        <p className="soft small">
          {words.sentence(OFF[`${startsOn}${first}`])} {words.sentence('count.startKept')}
        </p>
      </div>
    </details>
  );
}

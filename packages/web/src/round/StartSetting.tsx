import type { CountClock, CountFirst } from '@evenfall/clinical';
import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';

type StartSettingProps = { readonly startsOn: CountClock; readonly first: CountFirst };

/**
 * Each way to start: what the hand does, and what it does to a rate on average. The two that suit their start come first.
 * For breaths it says the same: whoever looks on does not learn from the screen what is counted.
 */
const STARTS = {
  any1: { clock: 'any', first: 1, does: 'count.doAny1', off: 'count.offAny1' },
  beat0: { clock: 'beat', first: 0, does: 'count.doBeat0', off: 'count.offBeat0' },
  beat1: { clock: 'beat', first: 1, does: 'count.doBeat1', off: 'count.offBeat1' },
  any0: { clock: 'any', first: 0, does: 'count.doAny0', off: 'count.offAny0' },
} as const;
type StartId = keyof typeof STARTS;
const START_IDS = Object.keys(STARTS) as StartId[];

/** How the clock starts and what the first one is called: said always, changed rarely, kept on this device. */
export function StartSetting({ startsOn, first }: StartSettingProps) {
  const { store, words } = useApp();
  const cue = useKept(({ kept }) => kept.cue ?? 'silent');
  const set = (id: StartId) => {
    const { clock, first } = STARTS[id];
    store.change((state) => ({ ...state, kept: { ...state.kept, start: { clock, first } } }));
  };
  const now: StartId = `${startsOn}${first}`;
  return (
    <details className="start-setting">
      <summary>{words.sentence(STARTS[now].does)}</summary>
      <div className="start-choices">
        <Choices
          legend={words.sentence('count.startSetting')}
          isListed
          choices={START_IDS.map((id) => {
            const { does, off } = STARTS[id];
            return { id, text: `${words.sentence(does)} ${words.sentence(off)}` };
          })}
          chosen={now}
          onChoose={set}
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
        <p className="soft small">{words.sentence('count.startKept')}</p>
      </div>
    </details>
  );
}

import type { CountClock, CountFirst, CountOf } from '@evenfall/clinical';
import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';

type StartSettingProps = {
  readonly of: CountOf;
  readonly startsOn: CountClock;
  readonly first: CountFirst;
};

/** Each way to start. The two that suit their start come first. */
const STARTS = {
  any1: { clock: 'any', first: 1 },
  beat0: { clock: 'beat', first: 0 },
  beat1: { clock: 'beat', first: 1 },
  any0: { clock: 'any', first: 0 },
} as const;
/** What the hand does, and what it does to a rate on average. */
const SAID = {
  pulse: {
    any1: ['count.doAny1', 'count.offAny1'],
    beat0: ['count.doBeat0', 'count.offBeat0'],
    beat1: ['count.doBeat1', 'count.offBeat1'],
    any0: ['count.doAny0', 'count.offAny0'],
  },
  breaths: {
    any1: ['count.doAny1Breaths', 'count.offAny1'],
    beat0: ['count.doBeat0Breaths', 'count.offBeat0Breaths'],
    beat1: ['count.doBeat1Breaths', 'count.offBeat1Breaths'],
    any0: ['count.doAny0Breaths', 'count.offAny0Breaths'],
  },
} as const;
type StartId = keyof typeof STARTS;
const START_IDS = Object.keys(STARTS) as StartId[];

/** How the clock starts and what the first one is called: said always, changed rarely, kept on this device. */
export function StartSetting({ of, startsOn, first }: StartSettingProps) {
  const { store, words } = useApp();
  const cue = useKept(({ kept }) => kept.cue ?? 'silent');
  const set = (id: StartId) => {
    const { clock, first } = STARTS[id];
    store.change((state) => ({ ...state, kept: { ...state.kept, start: { clock, first } } }));
  };
  const now: StartId = `${startsOn}${first}`;
  return (
    <details className="start-setting">
      <summary>{words.sentence(SAID[of][now][0])}</summary>
      <div className="start-choices">
        <Choices
          legend={words.sentence('count.startSetting')}
          isListed
          choices={START_IDS.map((id) => {
            const [does, off] = SAID[of][id];
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

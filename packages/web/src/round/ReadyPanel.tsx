import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Dial } from '../parts/Dial.js';
import { firstWindowOf } from './firstWindowOf.js';
import type { Measuring } from './measuring.js';
import type { PanelProps } from './panelProps.js';
import { pressed } from './pressed.js';
import { StartSetting } from './StartSetting.js';
import { useCue } from './useCue.js';

type ReadyProps = PanelProps & { readonly measuring: Extract<Measuring, { at: 'ready' }> };

/** The watch before it starts: which window, how the clock starts, and one large button. */
export function ReadyPanel({ round, sign, measuring }: ReadyProps) {
  const { words, clock, session } = useApp();
  const setting = useKept(({ kept }) => kept.start);
  const { countRules } = round.inForce;
  const windows = sign === 'pulse' ? countRules.pulseWindowsSeconds : countRules.breathsWindowsSeconds;
  const before = firstWindowOf(round, sign);
  const windowSeconds = measuring.windowSeconds ?? before.windowSeconds;
  const { clock: startsOn, first } = setting ?? countRules;
  const offered = [...new Set([...windows, windowSeconds])].sort((a, b) => a - b);

  const cue = useCue();
  const start = (atMs: number) => {
    cue();
    round.measure(sign, {
      at: 'running',
      session,
      startedAtMs: atMs,
      start: { windowSeconds, clock: startsOn, first },
      measuredAt: clock.stamp(),
    });
  };
  return (
    <>
      <Dial startedAtMs={null} windowSeconds={windowSeconds} />
      {offered.length === 1 ? (
        <p className="window-only">{words.sentence('count.seconds', { seconds: windowSeconds })}</p>
      ) : (
        <Choices
          legend={words.sentence('count.window')}
          isLegendUnseen
          choices={offered.map((seconds) => ({
            id: String(seconds),
            text: words.sentence('count.seconds', { seconds }),
          }))}
          chosen={String(windowSeconds)}
          onChoose={(seconds) => round.measure(sign, { ...measuring, windowSeconds: Number(seconds) })}
        />
      )}
      {before.why.map((flag) => (
        <p key={flag.code} className="soft small">
          {words.detail(flag)}
        </p>
      ))}
      <button type="button" className="button button-first button-thumb" {...pressed(start)}>
        {words.sentence(startsOn === 'beat' ? 'count.startOnBeat' : 'count.start')}
      </button>
      {sign === 'pulse' ? null : <p className="soft small">{words.sentence('count.quietly')}</p>}
      <StartSetting startsOn={startsOn} first={first} />
    </>
  );
}

import type { InForce } from '@evenfall/record';
import { clock } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { timeText } from '../app/times.js';
import { Field } from '../parts/Field.js';
import type { TextOf } from './weekGrid.js';

const DAY_MINUTES = 1440;

type SleepProps = {
  readonly form: { readonly text: TextOf; readonly set: (field: string, text: string) => void };
  readonly rules: InForce['ambulatoryRules'];
};

/** Asks when the person slept, or whether that is not known: before a recording is signed, and after. */
export function SleepTimes({ form, rules }: SleepProps) {
  const { words } = useApp();
  const at = (minutes: number) => timeText(clock(minutes), words);
  return (
    <>
      <div className="away-sleep" id="away-asleep" tabIndex={-1}>
        {(['asleepFrom', 'asleepTo', 'napFrom', 'napTo'] as const).map((field) => (
          <Field key={field} label={words.sentence(`away.${field}`)}>
            {(control) => (
              <input
                {...control}
                type="time"
                value={form.text(field)}
                onChange={({ target }) => form.set(field, target.value)}
              />
            )}
          </Field>
        ))}
      </div>
      <label className="tick">
        <input
          type="checkbox"
          checked={form.text('asleepUnknown') !== ''}
          onChange={({ target }) => form.set('asleepUnknown', target.checked ? 'yes' : '')}
        />
        <span>{words.sentence('away.asleepUnknown')}</span>
      </label>
      <p className="soft small">
        {words.sentence('away.asleepHint', {
          from: at(rules.nightFrom),
          // A night that ends at midnight ends the day.
          to: at(rules.nightTo === 0 ? DAY_MINUTES : rules.nightTo),
        })}
      </p>
    </>
  );
}

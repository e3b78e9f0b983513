import { PULSE_SITES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { type DraftValue, type Noticed, withNoticed } from './draft.js';
import type { PanelProps } from './panelProps.js';

/** What else was noticed. Nothing is chosen until it is touched, and a choice can be taken back. */
export function AlsoNoticed({ round, sign, value }: PanelProps & { readonly value: DraftValue }) {
  const { words } = useApp();
  const { rhythmFelt, strength, site } = value.noticed;
  const set = (noticed: Partial<Noticed>) =>
    round.change((draft) => withNoticed(draft, sign, value.entry, noticed));
  const none = { id: 'none' as const, text: words.sentence('count.notNoted') };
  return (
    <section className="noticed" aria-label={words.sentence('count.alsoNoticed')}>
      <h2>
        {words.sentence('count.alsoNoticed')}{' '}
        <span className="soft small">{words.sentence('count.optional')}</span>
      </h2>
      <Choices
        legend={words.sentence('count.rhythm')}
        choices={[
          { id: 'regular', text: words.sentence('count.regular') },
          { id: 'irregular', text: words.sentence('count.irregular') },
          ...(rhythmFelt === null ? [] : [none]),
        ]}
        chosen={rhythmFelt}
        onChoose={(id) => set({ rhythmFelt: id === 'none' ? null : id })}
      />
      {sign === 'pulse' ? (
        <>
          <Choices
            legend={words.sentence('count.strength')}
            choices={[
              { id: 'weak', text: words.sentence('count.weak') },
              { id: 'normal', text: words.sentence('count.normal') },
              { id: 'strong', text: words.sentence('count.strong') },
              ...(strength === null ? [] : [none]),
            ]}
            chosen={strength}
            onChoose={(id) => set({ strength: id === 'none' ? null : id })}
          />
          <Field label={words.sentence('count.site')}>
            {(control) => (
              <select
                {...control}
                value={site ?? ''}
                onChange={(event) =>
                  set({ site: PULSE_SITES.find((one) => one === event.target.value) ?? null })
                }
              >
                <option value="">{words.sentence('count.notNoted')}</option>
                {PULSE_SITES.map((one) => (
                  <option key={one} value={one}>
                    {words.title('site', one)}
                  </option>
                ))}
              </select>
            )}
          </Field>
        </>
      ) : null}
    </section>
  );
}

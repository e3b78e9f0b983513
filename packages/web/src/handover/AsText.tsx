import { broughtTemplate, noticesOf, roundText, TEMPLATE_IDS, type TemplateId } from '@evenfall/exchange';
import type { Agent, ChartRound, Identity } from '@evenfall/record';
import { useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { dayText, stampText } from '../app/times.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { useEquipment } from '../equipment/useEquipment.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { BOOK } from '../server/load.js';
import { TemplateEditor } from './TemplateEditor.js';
import { withTemplate } from './templates.js';

type AsTextProps = {
  /** Signed rounds, newest first; at least one. */
  readonly signed: readonly ChartRound[];
  /** All rounds of the chart. */
  readonly rounds: readonly ChartRound[];
  readonly identity: Identity | null;
  readonly agents: readonly Agent[];
};

/** A round as plain text by a template of this device, as it will be copied. */
export function AsText({ signed, rounds, identity, agents }: AsTextProps) {
  const { words, store, clock } = useApp();
  const { equipment } = useEquipment();
  const rulesOf = useRulesOf();
  const invented = useKept(({ known }) => known.about.value?.site.invented ?? false);
  const own = useKept(({ kept }) => kept.templates);
  const [chosen, setChosen] = useState(signed[0]?.id ?? '');
  const [which, setWhich] = useState<TemplateId>('line');
  const [copied, setCopied] = useState<'handover.copied' | 'handover.notCopied' | null>(null);
  const round = signed.find(({ id }) => id === chosen) ?? signed[0];
  if (round === undefined) return null;
  const template = own?.[which] ?? broughtTemplate(which, words);
  const notices = noticesOf({ book: BOOK, invented });
  const of = {
    round,
    rounds,
    identity,
    agents,
    rulesOf,
    words,
    dayText: (date: string) => dayText(date, words),
    now: clock.stamp().at,
    gauges: equipment?.gauges ?? null,
  };
  const made = roundText(template, of, notices);

  const set = (text: string | null) => {
    setCopied(null);
    store.change((state) => ({ ...state, kept: withTemplate(state.kept, which, text) }));
  };
  const copy = async (text: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setCopied('handover.copied');
    } catch {
      setCopied('handover.notCopied');
    }
  };
  return (
    <>
      <Field label={words.sentence('handover.whichRound')}>
        {(control) => (
          <select
            {...control}
            value={round.id}
            onChange={(event) => {
              setCopied(null);
              setChosen(event.target.value);
            }}
          >
            {signed.map((one) => (
              <option key={one.id} value={one.id}>
                {stampText(one.signed?.original.measuredAt ?? { at: '' }, words)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Choices
        legend={words.sentence('handover.whichTemplate')}
        choices={TEMPLATE_IDS.map((id) => ({ id, text: words.sentence(`handover.${id}`) }))}
        chosen={which}
        onChoose={(id) => {
          setCopied(null);
          setWhich(id);
        }}
      />
      <div className="handover-preview">
        <h3>{words.sentence('handover.preview')}</h3>
        {made.ok ? (
          <>
            <pre>{made.value}</pre>
            <div className="buttons">
              <button type="button" className="button button-first" onClick={() => void copy(made.value)}>
                {words.sentence('handover.copy')}
              </button>
              <p role="status">{copied === null ? '' : words.sentence(copied)}</p>
            </div>
          </>
        ) : (
          <p className="field-wrong">{words.sentence('handover.templateWrong')}</p>
        )}
      </div>
      <TemplateEditor
        key={which}
        template={template}
        isOwn={own?.[which] !== undefined}
        wrong={made.ok ? null : made.refusals.map((one) => words.problem(one).message).join(' ')}
        onChange={set}
        onRestore={() => set(null)}
      />
    </>
  );
}

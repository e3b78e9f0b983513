import {
  type FieldShape,
  listPresets,
  type Protocol,
  parseProtocol,
  type Refusal,
  type Field as RuleField,
  SECTION_NAMES,
  SECTIONS,
  type SectionName,
} from '@evenfall/clinical';
import { publishedSource, type Words } from '@evenfall/words';
import { useEffect, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { Page } from '../parts/Page.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK, loadAbout } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import {
  choiceOf,
  guidelines,
  isTypeable,
  NOTHING_CHOSEN_YET,
  type ProtocolChoice,
  protocolOf,
  withGuideline,
} from './protocolForm.js';

/** The rules of the place, from published ones, each with its source; what is put in force counts from now on. */
export function ProtocolPage() {
  const app = useApp();
  const { words, server } = app;
  const version = useKept(({ known }) => known.about.value?.protocolVersion ?? null);
  const [choice, setChoice] = useState<ProtocolChoice>(NOTHING_CHOSEN_YET);
  useEffect(() => {
    if (version === null) return;
    void (async () => {
      const answer = await server.call('listProtocols', {});
      const found = answer.ok ? answer.value.protocols.find((one) => one.version === version) : undefined;
      const read = found === undefined ? null : parseProtocol(found.content);
      if (read?.ok) setChoice(choiceOf(read.value));
    })();
  }, [version, server]);
  const read = protocolOf(choice);
  return (
    <Page title={words.sentence('protocol.title')} back={{ href: '/', text: words.sentence('people.title') }}>
      <div className="form protocol">
        <p className="notice">
          {version === null
            ? words.sentence('protocol.none')
            : words.sentence('protocol.inForce', { text: version.slice(0, 12) })}
        </p>
        <p>{words.sentence('protocol.lead')}</p>
        <Field label={words.sentence('protocol.guideline')}>
          {(control) => (
            <select
              {...control}
              value=""
              onChange={(event) => setChoice((was) => withGuideline(was, event.target.value))}
            >
              <option value="">{words.sentence('protocol.guidelineNone')}</option>
              {guidelines().map((id) => (
                <option key={id} value={id}>
                  {words.title('scheme', id)}
                </option>
              ))}
            </select>
          )}
        </Field>
        {SECTION_NAMES.map((section) => (
          <SectionFields
            key={section}
            section={section}
            choice={choice}
            protocol={read.ok ? read.value : null}
            refusals={read.ok ? [] : read.refusals}
            onChange={setChoice}
          />
        ))}
        <PutInForce protocol={read.ok ? read.value : null} isNoneOffered={version !== null} />
      </div>
    </Page>
  );
}

type SectionProps = {
  readonly section: SectionName;
  readonly choice: ProtocolChoice;
  readonly protocol: Protocol | null;
  readonly refusals: readonly Refusal[];
  readonly onChange: (change: (was: ProtocolChoice) => ProtocolChoice) => void;
};

function SectionFields({ section, choice, protocol, refusals, onChange }: SectionProps) {
  const { words } = useApp();
  const presets = listPresets().filter((one) => one.section === section);
  const chosen = choice.presets[section] ?? presets[0]?.id ?? '';
  const fields = Object.entries(SECTIONS[section].fields as Readonly<Record<string, FieldShape>>);
  const mine = refusals.filter(({ field }) => field.startsWith(`/sections/${section}/`));
  return (
    <section className="protocol-section" aria-label={words.sentence(`protocol.${section}`)}>
      <h2>{words.sentence(`protocol.${section}`)}</h2>
      <Field label={words.sentence('protocol.preset')}>
        {(control) => (
          <select
            {...control}
            value={chosen}
            onChange={(event) =>
              onChange((was) => ({ ...was, presets: { ...was.presets, [section]: event.target.value } }))
            }
          >
            {presets.map(({ id }) => (
              <option key={id} value={id}>
                {presetTitle(section, id, words)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <details className="more" open={mine.length > 0 || undefined}>
        <summary>{words.sentence('protocol.fields')}</summary>
        <div className="form">
          {fields.map(([key, shape]) => (
            <RuleInput
              key={key}
              name={`${section}/${key}`}
              shape={shape}
              field={ruleAt(protocol, section, key)}
              choice={choice}
              wrong={mine.find(({ field }) => field.startsWith(`/sections/${section}/${key}`)) ?? null}
              onChange={onChange}
            />
          ))}
        </div>
      </details>
    </section>
  );
}

function ruleAt(protocol: Protocol | null, section: SectionName, key: string): RuleField | null {
  const fields = protocol?.sections[section] as Readonly<Record<string, RuleField>> | undefined;
  return fields?.[key] ?? null;
}

/** What a preset is called: a guideline by its rule in this section, else by its own name. */
function presetTitle(section: SectionName, id: string, words: Words): string {
  const groups = ['readings', 'arms', 'recheck', 'actNow', 'signing'] as const;
  const group = groups.find((one) => one === section);
  const titles = [
    ...(group === undefined ? [] : [words.title(group, id)]),
    words.title('preset', id),
    words.title('scheme', id),
  ];
  if (section === 'category') titles.reverse();
  return titles.find((title) => title !== id) ?? id;
}

type RuleInputProps = {
  readonly name: string;
  readonly shape: FieldShape;
  readonly field: RuleField | null;
  readonly choice: ProtocolChoice;
  readonly wrong: Refusal | null;
  readonly onChange: SectionProps['onChange'];
};

function RuleInput({ name, shape, field, choice, wrong, onChange }: RuleInputProps) {
  const { words } = useApp();
  const label = shape.unit === null ? shape.meaning : `${shape.meaning} (${shape.unit})`;
  const published = field?.replaces ?? field ?? shape;
  const sure = words.sentence(`protocol.${published.sure}`);
  const named = publishedSource(published.source);
  const source =
    named === null
      ? words.sentence('protocol.unnamed', { sure })
      : words.sentence('protocol.source', { source: named, sure });
  const hint =
    field?.replaces == null
      ? source
      : `${words.sentence('protocol.local', { text: valueText(field.replaces.value, words) })}. ${source}`;
  const set = (text: string) => onChange((was) => ({ ...was, own: { ...was.own, [name]: text } }));
  const value = choice.own[name] ?? valueTyped(field?.value ?? shape.value);
  const says = wrong === null ? null : words.problem(wrong, { nameOf: () => shape.meaning }).message;
  if (!isTypeable(shape.value)) {
    return (
      <div className="field">
        <p>
          {label}: <strong>{valueText(field?.value ?? shape.value, words)}</strong>
        </p>
        <p className="field-hint">{hint}</p>
      </div>
    );
  }
  return (
    <Field label={label} hint={hint} wrong={says}>
      {(control) =>
        shape.kind === 'number' ? (
          <input
            {...control}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            className="short-input"
            value={value}
            onChange={(event) => set(event.target.value)}
          />
        ) : (
          <select {...control} value={value} onChange={(event) => set(event.target.value)}>
            {choicesOf(shape).map((one) => (
              <option key={one} value={one}>
                {one === 'true' || one === 'false'
                  ? words.sentence(one === 'true' ? 'protocol.yes' : 'protocol.no')
                  : one}
              </option>
            ))}
          </select>
        )
      }
    </Field>
  );
}

function choicesOf(shape: FieldShape): string[] {
  if (shape.kind === 'yes-no') return ['true', 'false'];
  return shape.kind === 'choice' ? shape.choices.map(String) : [];
}

function valueTyped(value: RuleField['value']): string {
  return isTypeable(value) ? String(value) : '';
}

function valueText(value: RuleField['value'], words: Words): string {
  if (value === null) return words.sentence('protocol.noneHere');
  if (typeof value === 'boolean') return words.sentence(value ? 'protocol.yes' : 'protocol.no');
  if (typeof value === 'number') return words.say.short(value, 3);
  if (typeof value === 'string') return value;
  if ('comparison' in value) return `${value.comparison} ${words.say.short(value.limit, 3)}`;
  return value.length === 0 ? words.sentence('protocol.noneHere') : value.join(', ');
}

type PutProps = { readonly protocol: Protocol | null; readonly isNoneOffered: boolean };

function PutInForce({ protocol, isNoneOffered }: PutProps) {
  const app = useApp();
  const { words, server, store } = app;
  const form = useForm('protocol');
  const agent = useKept(({ kept }) => kept.agent);
  const [said, setSaid] = useState<string | null>(null);
  const put = async (chosen: Protocol | null) => {
    setSaid(null);
    if (agent === null) return setSaid(words.sentence('review.needsAgent'));
    let version: string | null = null;
    if (chosen !== null) {
      const kept = await server.call('addProtocol', { body: { content: chosen as never } });
      if (!kept.ok) return setSaid(refusedBecause(kept) ?? words.sentence('app.failed'));
      version = kept.value.version;
    }
    const entry = {
      ...form.entry(),
      book: BOOK,
      kind: 'protocol-chosen' as const,
      schema: WRITTEN_SCHEMA,
      person: null,
      round: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: null,
      content: { version },
    };
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (!answer.ok)
      return setSaid(
        answer.offline
          ? words.sentence('app.unreachable')
          : (refusedBecause(answer) ?? words.sentence('app.failed')),
      );
    form.done();
    await loadAbout(app);
    setSaid(words.sentence('protocol.chosen'));
  };
  return (
    <div className="form">
      <WhoMeasures />
      {said === null ? null : (
        <p className="notice" role="status">
          {said}
        </p>
      )}
      {protocol === null ? (
        <p className="field-wrong">{words.sentence('protocol.wrong')}</p>
      ) : (
        <button type="button" className="button button-first button-large" onClick={() => void put(protocol)}>
          {words.sentence('protocol.choose')}
        </button>
      )}
      {isNoneOffered ? (
        <button type="button" className="button button-quiet" onClick={() => void put(null)}>
          {words.sentence('protocol.chooseNone')}
        </button>
      ) : null}
    </div>
  );
}

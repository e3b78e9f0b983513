import {
  type FieldShape,
  listPresets,
  type Protocol,
  type Refusal,
  type Field as RuleField,
  SECTIONS,
  type SectionName,
} from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { withPoint } from '../app/withPoint.js';
import { DescribedSelect } from '../parts/DescribedSelect.js';
import { Field } from '../parts/Field.js';
import { presetHint } from './presetHint.js';
import {
  fieldRefused,
  isTypeable,
  type ProtocolChoice,
  presetOf,
  publishedField,
  typedNumber,
  typedText,
  withOwn,
  withPreset,
} from './protocolForm.js';
import { fieldMeaning, fieldName, originText, presetTitle, valueText, wordText } from './protocolText.js';
import { isTimeOfDay } from './timeOfDay.js';

/** Where a field stands on the page, so that a list can lead to it. */
export function fieldId(section: string, key: string): string {
  return `rule-${section}-${key}`;
}

type SectionProps = {
  readonly section: SectionName;
  readonly choice: ProtocolChoice;
  /** The rules of the sets that were chosen, before any value of the place. */
  readonly published: Protocol;
  /** What was in force when the page was opened; null for nothing. */
  readonly inForce: Protocol | null;
  readonly refusals: readonly Refusal[];
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
  readonly onChange: (change: (was: ProtocolChoice) => ProtocolChoice) => void;
};

/** One section: the set of rules it starts from, what the place sets otherwise, and every rule of it. */
export function SectionFields(props: SectionProps) {
  const { section, choice, published, inForce, refusals, isOpen, onOpen, onChange } = props;
  const { words } = useApp();
  const presets = listPresets().filter((one) => one.section === section);
  const chosen = presetOf(section, choice.presets);
  const fields = Object.entries(SECTIONS[section].fields as Readonly<Record<string, FieldShape>>);
  const own = fields.flatMap(([key, shape]) => {
    const place = `${section}/${key}`;
    const field = publishedField(published, section, key);
    const value = ownValue(choice, place, shape, field);
    return field === null || value === null ? [] : [{ place, key, shape, field, value }];
  });
  return (
    <section className="protocol-section" aria-label={words.sentence(`protocol.${section}`)}>
      <h2>{words.sentence(`protocol.${section}`)}</h2>
      <DescribedSelect
        label={words.sentence('protocol.preset')}
        value={chosen}
        options={presets.map(({ id }) => {
          const text = presetTitle(section, id, words);
          return {
            value: id,
            text:
              id === chosen && own.length > 0
                ? words.sentence('protocol.presetChanged', { text, count: own.length })
                : text,
            hint: presetHint(section, id, inForce, words),
          };
        })}
        onChange={(id) => onChange((was) => withPreset(was, section, id))}
      />
      {own.length === 0 ? null : (
        <ul className="own-values">
          {own.map(({ place, shape, field, value }) => (
            <li key={place}>
              {words.sentence('protocol.ownIs', {
                name: fieldMeaning(place, words),
                own: valueText(place, value, shape.unit, words),
                published: valueText(place, field.value, shape.unit, words),
              })}
            </li>
          ))}
        </ul>
      )}
      <details
        className="more"
        open={isOpen}
        onToggle={(event) => {
          if (event.currentTarget.open !== isOpen) onOpen(event.currentTarget.open);
        }}
      >
        <summary>{words.sentence('protocol.fields')}</summary>
        <div className="form">
          {fields.map(([key, shape]) => (
            <RuleInput
              key={key}
              section={section}
              name={key}
              shape={shape}
              published={publishedField(published, section, key)}
              now={inForce === null ? null : publishedField(inForce, section, key)}
              choice={choice}
              wrong={refusals.find(({ field }) => isAbout(field, section, key)) ?? null}
              onChange={onChange}
            />
          ))}
        </div>
      </details>
    </section>
  );
}

function isAbout(pointer: string, section: string, key: string): boolean {
  const field = fieldRefused(pointer);
  return field?.section === section && field.key === key;
}

/** The value that the place sets itself, as far as it was typed; null where it is the published one. */
function ownValue(
  choice: ProtocolChoice,
  place: string,
  shape: FieldShape,
  published: RuleField | null,
): RuleField['value'] | null {
  const fixed = choice.fixed[place];
  if (fixed !== undefined) return fixed;
  const text = (choice.own[place] ?? '').trim();
  if (published === null || text === '' || text === String(published.value)) return null;
  if (shape.kind === 'number' && typedNumber(shape, text) === published.value) return null;
  // What is no number stays as it was typed; it is refused beside its field.
  return typedNumber(shape, text) ?? text;
}

type RuleInputProps = {
  readonly section: SectionName;
  readonly name: string;
  readonly shape: FieldShape;
  readonly published: RuleField | null;
  readonly now: RuleField | null;
  readonly choice: ProtocolChoice;
  readonly wrong: Refusal | null;
  readonly onChange: SectionProps['onChange'];
};

function RuleInput({ section, name, shape, published, now, choice, wrong, onChange }: RuleInputProps) {
  const { words } = useApp();
  const place = `${section}/${name}`;
  const id = fieldId(section, name);
  const from: RuleField = published ?? { ...shape, replaces: null };
  const own = ownValue(choice, place, shape, published);
  const say = (value: RuleField['value']) => valueText(place, value, shape.unit, words);
  const typed = choice.own[place];
  const isBlank = typed !== undefined && typed.trim() === '';
  const shown = own ?? from.value;
  const isNow = now === null || say(now.value) === say(shown);
  const hint = [
    ...(isBlank ? [words.sentence('protocol.blank', { text: say(from.value) })] : []),
    own === null
      ? originText(place, from, words)
      : originText(place, { ...from, value: own, replaces: from }, words),
    ...(isNow ? [] : [words.sentence('protocol.now', { text: say(now.value) })]),
  ].join('; ');
  const says =
    wrong === null ? null : words.problem(wrong, { nameOf: () => fieldMeaning(place, words) }).message;
  const set = (text: string) => onChange((was) => withOwn(was, place, text));
  if (!isTypeable(from.value)) {
    return (
      <div className="field" id={id} tabIndex={-1}>
        <p>
          {fieldName(place, shape.unit, words)}: <strong>{say(shown)}</strong>
        </p>
        {says === null ? null : <p className="field-wrong">{says}</p>}
        <p className="field-hint">{hint}</p>
      </div>
    );
  }
  const value = typed ?? typedText(shape, from.value);
  return (
    <Field id={id} label={fieldName(place, shape.unit, words)} hint={hint} wrong={says}>
      {(control) =>
        shape.kind === 'number' ? (
          <input
            {...control}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            className="short-input"
            value={value}
            onChange={({ target }) =>
              set(isTimeOfDay(shape.unit) ? target.value : withPoint(target.value, words.say))
            }
          />
        ) : (
          <select {...control} value={value} onChange={(event) => set(event.target.value)}>
            {choicesOf(shape).map((one) => (
              <option key={one} value={one}>
                {wordText(place, one, words)}
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

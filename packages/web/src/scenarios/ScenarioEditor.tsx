import { SCENARIOS, type Scenario } from '@evenfall/physiology';
import { type ReactNode, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Refused } from '../parts/Refused.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { roomAt } from '../practice/roomAt.js';
import { idFromName } from './idFromName.js';
import { ScenarioFieldShown } from './ScenarioFieldShown.js';
import { saveJson } from './saveJson.js';
import { type Draft, elementOf, fieldOf, jsonOfDraft, readDraft, severalIn } from './scenarioDraft.js';
import { FIELD_GROUPS, type FieldGroup } from './scenarioFields.js';
import { useSendScenario } from './useSendScenario.js';

type EditorProps = {
  /** Names the form on this device: what is typed outlives a reload. */
  readonly form: string;
  readonly initial: Draft;
  /** Ids that are offered already. */
  readonly taken: readonly string[];
  readonly again: () => Promise<void>;
  /** It was kept, under this name. */
  readonly onKept: (name: string) => void;
};

const BUILT_IN = SCENARIOS.map(({ id }) => id);

function saveFile(scenario: Scenario): void {
  saveJson(`${scenario.id}.scenario.json`, scenario);
}

/** All fields of a simulated person; what is wrong is named at its field once it is to be kept. */
export function ScenarioEditor({ form: name, initial, taken, again, onKept }: EditorProps) {
  const { words } = useApp();
  const form = useForm(name, initial);
  const { send, refused, agent } = useSendScenario(form);
  const [isAsked, setAsked] = useState(false);
  const [kept, setKept] = useState<Scenario | null>(null);
  const place = useRef<HTMLFormElement>(null);
  const made = idFromName(form.text('title'), [...taken, ...BUILT_IN]);
  const json = jsonOfDraft((path) => (path === 'id' ? form.text('id').trim() || made : form.text(path)));
  const { scenario, refusals } = readDraft(json);
  const shown = isAsked ? refusals : [];
  const isTaken = taken.includes(form.text('id').trim());
  const change = (path: string) => (text: string) => {
    setKept(null);
    form.set(path, text);
  };
  const keep = async () => {
    setAsked(true);
    if (scenario === null) {
      const first = refusals.find((one) => fieldOf(one) !== null);
      if (first === undefined) return;
      const at = [first.field, fieldOf(first) ?? ''].map((one) => `#${elementOf(one)} `);
      const found = at
        .map((one) => place.current?.querySelector<HTMLElement>(`${one} :is(input, select, textarea)`))
        .find((one) => one != null);
      if (found === undefined) return;
      const part = found.closest('details');
      if (part !== null) part.open = true;
      found.focus();
      return;
    }
    if (await send(scenario, false)) {
      setKept(scenario);
      onKept(scenario.title ?? scenario.id);
      await again();
    }
  };
  const saveAsFile = () => {
    setAsked(true);
    if (scenario !== null) saveFile(scenario);
  };
  if (kept !== null) {
    return (
      <div className="scenario-kept">
        <p role="status">{words.sentence('scenarioForm.kept')}</p>
        <div className="buttons">
          <Link href={roomAt(kept.id)} className="button button-first">
            {words.sentence('scenarioForm.try')}
          </Link>
          <button type="button" className="button" onClick={() => saveFile(kept)}>
            {words.sentence('scenarioForm.save')}
          </button>
          <Link href="/practice/scenarios" className="button">
            {words.sentence('scenarioForm.back')}
          </Link>
        </div>
      </div>
    );
  }
  return (
    <form
      ref={place}
      className="scenario-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <p className="soft">
        {words.sentence('scenarioForm.invented')} {words.sentence('scenarioForm.neededHint')}
      </p>
      {FIELD_GROUPS.map((group, at) => (
        <FieldPart
          key={group.says}
          group={group}
          isOpenAtFirst={at === 0}
          filled={group.fields.reduce((sum, { path, shape }) => {
            const text = form.text(path).trim();
            return sum + (shape.is === 'several' ? severalIn(text).length : text === '' ? 0 : 1);
          }, 0)}
          isWrong={shown.some((one) => group.fields.some(({ path }) => fieldOf(one) === path))}
        >
          {group.fields.map((field) => (
            <ScenarioFieldShown
              key={field.path}
              field={field}
              text={form.text(field.path)}
              wrong={shown.filter((one) => fieldOf(one) === field.path)}
              set={change(field.path)}
              hint={
                field.path === 'id' && form.text('id').trim() === ''
                  ? made === ''
                    ? words.sentence('scenarioForm.idFromName')
                    : words.sentence('scenarioForm.idMade', { id: made })
                  : undefined
              }
            />
          ))}
        </FieldPart>
      ))}
      {shown.length === 0 ? null : (
        <p className="notice" role="alert">
          {words.sentence('scenarioForm.wrong', { fields: new Set(shown.map(fieldOf)).size })}
        </p>
      )}
      {isTaken ? <p className="soft">{words.sentence('scenarioForm.isNewVersion')}</p> : null}
      {agent === null ? <WhoMeasures /> : null}
      <Refused text={refused} />
      <div className="buttons scenario-keep">
        <button type="submit" className="button button-first">
          {words.sentence('scenarioForm.keep')}
        </button>
        <button type="button" className="button" onClick={saveAsFile}>
          {words.sentence('scenarioForm.save')}
        </button>
      </div>
    </form>
  );
}

type PartProps = {
  readonly group: FieldGroup;
  readonly isOpenAtFirst: boolean;
  /** How many of its fields hold something. */
  readonly filled: number;
  /** Something in it is wrong: then it is open. */
  readonly isWrong: boolean;
  readonly children: ReactNode;
};

/** A part of the form, folded until somebody looks at it. */
function FieldPart({ group: { says }, isOpenAtFirst, filled, isWrong, children }: PartProps) {
  const { words } = useApp();
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  const title = words.sentence(says as 'scenarioForm.group-who');
  return (
    <details
      className="scenario-group"
      open={isOpen || isWrong}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <span>
          {title}{' '}
          <span className="scenario-filled">
            {words.sentence('scenarioForm.filledIn', { fields: filled })}
          </span>
        </span>
      </summary>
      <fieldset className="scenario-fields" aria-label={title}>
        {children}
      </fieldset>
    </details>
  );
}

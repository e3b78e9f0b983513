import { leftOutOfText, TEXT_FIELDS } from '@evenfall/exchange';
import { useRef } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';

type TemplateEditorProps = {
  readonly template: string;
  /** Whether it was changed on this device. */
  readonly isOwn: boolean;
  readonly wrong: string | null;
  readonly onChange: (text: string) => void;
  readonly onRestore: () => void;
};

/** Where a template is changed: what it makes is seen above with every stroke, and a field is put in by a touch. */
export function TemplateEditor({ template, isOwn, wrong, onChange, onRestore }: TemplateEditorProps) {
  const { words } = useApp();
  const area = useRef<HTMLTextAreaElement>(null);
  const insert = (field: string) => {
    const at = area.current?.selectionStart ?? template.length;
    const end = area.current?.selectionEnd ?? at;
    onChange(`${template.slice(0, at)}{${field}}${template.slice(end)}`);
    area.current?.focus();
  };
  const leftOut = leftOutOfText(template).map((field) => `{${field}}`);
  return (
    <details className="more">
      <summary>{words.sentence('handover.edit')}</summary>
      <div className="form">
        <Field
          label={words.sentence('handover.template')}
          hint={words.sentence('handover.templateHint')}
          wrong={wrong}
        >
          {(control) => (
            <textarea
              {...control}
              ref={area}
              rows={6}
              maxLength={4000}
              spellCheck={false}
              value={template}
              onChange={(event) => onChange(event.target.value)}
            />
          )}
        </Field>
        {leftOut.length === 0 ? null : (
          <p className="notice">{words.sentence('handover.leftOut', { fields: words.say.anyOf(leftOut) })}</p>
        )}
        <fieldset className="handover-fields">
          <legend>{words.sentence('handover.fields')}</legend>
          {TEXT_FIELDS.map((field) => (
            <button key={field} type="button" className="button button-quiet" onClick={() => insert(field)}>
              {field}
            </button>
          ))}
        </fieldset>
        <p className="field-hint">{words.sentence('handover.keptHere')}</p>
        {isOwn ? (
          <button type="button" className="button" onClick={onRestore}>
            {words.sentence('handover.asBrought')}
          </button>
        ) : null}
      </div>
    </details>
  );
}

import { useApp } from '../app/context.js';
import { withPoint } from '../app/withPoint.js';
import { Field } from '../parts/Field.js';
import type { RunField } from './pressureDraft.js';

const TEXT_FIELDS: readonly RunField[] = ['note'];

type RunInputProps = {
  readonly field: RunField;
  readonly text: string;
  readonly wrong: string | null;
  readonly hint?: string | undefined;
  readonly onChange: (text: string) => void;
};

/** What may be typed beside the numbers of a reading. */
export function RunInput({ field, text, wrong, hint, onChange }: RunInputProps) {
  const { words } = useApp();
  const isText = TEXT_FIELDS.includes(field);
  return (
    <Field label={words.sentence(`pressure.${field}`)} hint={hint} wrong={wrong}>
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode={isText ? 'text' : 'decimal'}
          autoComplete="off"
          maxLength={isText ? 1000 : 8}
          className={isText ? undefined : 'short-input'}
          value={text}
          onChange={({ target }) => onChange(isText ? target.value : withPoint(target.value, words.say))}
        />
      )}
    </Field>
  );
}

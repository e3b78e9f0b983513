import { useApp } from '../app/context.js';
import { withPoint } from '../app/withPoint.js';
import { Field } from '../parts/Field.js';

type TextProps = {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly wrong?: string | null;
  /** Numbers get the number keys of a phone and a short field. */
  readonly isNumber?: boolean;
};

/** One line of text or one number, as typed. */
export function TextField({ label, hint, value, onChange, wrong = null, isNumber = false }: TextProps) {
  const { words } = useApp();
  return (
    <Field label={label} hint={hint} wrong={wrong}>
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode={isNumber ? 'decimal' : 'text'}
          autoComplete="off"
          maxLength={200}
          className={isNumber ? 'short-input' : undefined}
          value={value}
          onChange={({ target }) => onChange(isNumber ? withPoint(target.value, words.say) : target.value)}
        />
      )}
    </Field>
  );
}

import { Field } from '../parts/Field.js';

type DayProps = {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onChange: (day: string) => void;
  readonly wrong: string | null;
};

/** A day, by the native control. */
export function DayField({ label, hint, value, onChange, wrong }: DayProps) {
  return (
    <Field label={label} hint={hint} wrong={wrong}>
      {(control) => (
        <input
          {...control}
          type="date"
          className="day-input"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}

import { Field } from './Field.js';

type LineProps = {
  readonly label: string;
  readonly wrong?: string | null;
  readonly value: string;
  readonly onType: (text: string) => void;
};

/** Characters of a line in somebody's own words, such as a reason. Source: decision of this project (as the record takes). */
const LONGEST = 500;

/** A line in somebody's own words, with its label and what is wrong with it. */
export function TextLine({ label, wrong = null, value, onType }: LineProps) {
  return (
    <Field label={label} wrong={wrong}>
      {(control) => (
        <input
          {...control}
          type="text"
          autoComplete="off"
          maxLength={LONGEST}
          value={value}
          onChange={({ currentTarget }) => onType(currentTarget.value)}
        />
      )}
    </Field>
  );
}

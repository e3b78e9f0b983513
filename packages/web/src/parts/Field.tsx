import { type ReactNode, useId } from 'react';

type FieldProps = {
  /** The id of the control, where something leads to it; one of its own if absent. */
  readonly id?: string;
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with it, in words; null for nothing. */
  readonly wrong?: string | null;
  /** The native control, given its id and what describes it. */
  readonly children: (control: {
    id: string;
    'aria-describedby': string | undefined;
    'aria-invalid': boolean;
  }) => ReactNode;
};

/** A native control with its label above it, and what is wrong with it beside it. */
export function Field({ id: given, label, hint, wrong = null, children }: FieldProps) {
  const made = useId();
  const id = given ?? made;
  const described = [hint === undefined ? null : `${id}-hint`, wrong === null ? null : `${id}-wrong`];
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({
        id,
        'aria-describedby': described.filter((part) => part !== null).join(' ') || undefined,
        'aria-invalid': wrong !== null,
      })}
      {wrong === null ? null : (
        <p className="field-wrong" id={`${id}-wrong`}>
          {wrong}
        </p>
      )}
      {hint === undefined ? null : (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}

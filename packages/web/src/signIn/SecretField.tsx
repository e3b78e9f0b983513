import { useEffect, useRef } from 'react';
import { Field } from '../parts/Field.js';

type SecretFieldProps = {
  readonly label: string;
  readonly hint?: string;
  readonly wrong?: string | null;
  readonly value: string;
  readonly onChange: (typed: string) => void;
  /** What a keeper of passwords is told. */
  readonly kind: 'current-password' | 'new-password' | 'pin';
  readonly isFirst?: boolean;
};

/** A pass phrase or a PIN: not shown, and kept nowhere on this page. */
export function SecretField({
  label,
  hint,
  wrong,
  value,
  onChange,
  kind,
  isFirst = false,
}: SecretFieldProps) {
  const input = useRef<HTMLInputElement>(null);
  // The one field of a screen that was just asked for. `autoFocus` works once in the life of a page only.
  useEffect(() => {
    if (isFirst) input.current?.focus();
  }, [isFirst]);
  return (
    <Field label={label} hint={hint} wrong={wrong ?? null}>
      {(control) => (
        <input
          {...control}
          ref={input}
          type="password"
          autoComplete={kind === 'pin' ? 'off' : kind}
          inputMode={kind === 'pin' ? 'numeric' : 'text'}
          className={kind === 'pin' ? 'pin-input' : undefined}
          maxLength={kind === 'pin' ? 8 : 128}
          value={value}
          onChange={({ target }) => onChange(target.value)}
        />
      )}
    </Field>
  );
}

import type { KeyboardEvent, ReactNode } from 'react';
import { FOCUSABLE } from './focusable.js';

type SpotProps = {
  readonly label: string;
  /** Absent where it can only be looked at. */
  readonly onTouch?: (() => void) | undefined;
  readonly className?: string;
  readonly children: ReactNode;
};

/** A part of a drawing that a hand can touch, and a key as well. */
export function Spot({ label, onTouch, className = '', children }: SpotProps) {
  if (onTouch === undefined) return <g className={className}>{children}</g>;
  const press = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    event.stopPropagation();
    onTouch();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a part of a drawing cannot be a button element
    <g
      className={`spot ${className}`}
      role="button"
      {...FOCUSABLE}
      aria-label={label}
      onClick={onTouch}
      onKeyDown={press}
    >
      {children}
    </g>
  );
}

import type { ReactNode } from 'react';

type FoldedProps = {
  readonly summary: string;
  /** Whose it is, for an ear that comes to it alone. */
  readonly of: string;
  readonly children: ReactNode;
};

/** What belongs to a value and is looked at when asked for: its evidence, and what can be changed of it. Never a flag. */
export function Folded({ summary, of, children }: FoldedProps) {
  return (
    <details className="folded">
      <summary>
        <span>
          {summary}
          <span className="unseen">: {of}</span>
        </span>
      </summary>
      <div className="folded-in">{children}</div>
    </details>
  );
}

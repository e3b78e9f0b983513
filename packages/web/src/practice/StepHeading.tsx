import { useLayoutEffect, useRef } from 'react';

type HeadingProps = {
  readonly text: string;
  /** For those who listen alone: the screen shows by itself what the step is. */
  readonly isUnseen?: boolean;
};

/** The heading of a step that took the place of another: it takes the focus, so that a voice and a keyboard go on here. */
export function StepHeading({ text, isUnseen = false }: HeadingProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <h2 ref={heading} tabIndex={-1} className={isUnseen ? 'unseen' : undefined}>
      {text}
    </h2>
  );
}

/** The figures a sentence speaks of. A key that is needed and not there is a broken promise of our own code. */
export type Figures = {
  readonly value: (key: string) => number;
  readonly has: (key: string) => boolean;
};

export class MissingFigure extends Error {}

/**
 * The figures of one flag or refusal.
 *
 * Errors: `value` throws {@link MissingFigure} when a sentence asks for a figure that is absent or not finite, so
 * that no sentence can say "undefined" or "NaN" to anybody.
 */
export function figuresOf(code: string, figures: Readonly<Record<string, number>>): Figures {
  return {
    has: (key) => Number.isFinite(figures[key]),
    value: (key) => {
      const value = figures[key];
      if (value === undefined || !Number.isFinite(value)) {
        throw new MissingFigure(`The sentence for ${code} needs the figure ${key}`);
      }
      return value;
    },
  };
}

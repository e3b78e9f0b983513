/** The figures a sentence speaks of, read by key. A key that is not there is a broken promise of our own code. */
export type Figures = (key: string) => number;

/**
 * Reads the figures of one flag or refusal.
 *
 * Errors: throws when a sentence asks for a figure that is absent or not finite, naming the code and the key,
 * so that no sentence can say "undefined" or "NaN" to anybody.
 */
export function figuresOf(code: string, figures: Readonly<Record<string, number>>): Figures {
  return (key) => {
    const value = figures[key];
    if (value === undefined || !Number.isFinite(value)) {
      throw new Error(`The sentence for ${code} needs the figure ${key}; got ${JSON.stringify(figures)}`);
    }
    return value;
  };
}

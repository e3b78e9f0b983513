/** An element of a figure as it stands in its text: name, attributes, text within. */
export type Found = {
  readonly name: string;
  readonly at: Readonly<Record<string, string>>;
  readonly text: string;
};

/** Every element of a figure, in order. */
export function elementsOf(svg: string): Found[] {
  return [...svg.matchAll(/<(\w+)((?: [\w:-]+="[^"]*")*)\/?>([^<]*)/g)].map(
    ([, name = '', attributes = '', text = '']) => ({
      name,
      at: Object.fromEntries(
        [...attributes.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
      ),
      text,
    }),
  );
}

/** Elements that have all of these classes. */
export function withClass(svg: string, ...classes: string[]): Found[] {
  return elementsOf(svg).filter(({ at }) =>
    classes.every((one) => (at.class ?? '').split(' ').includes(one)),
  );
}

/** Points of a path of straight lines, each stretch for itself. */
export function stretchesOf(d: string): (readonly [x: number, y: number])[][] {
  const stretches: (readonly [number, number])[][] = [];
  for (const [, step, x, y] of d.matchAll(/([ML])(-?[\d.]+)[ ,](-?[\d.]+)/g)) {
    if (step === 'M') stretches.push([]);
    stretches.at(-1)?.push([Number(x), Number(y)]);
  }
  return stretches;
}

/** Where a labelled axis puts a value: between the gridlines whose labels are `low` and `high`. Reads the drawing alone. */
export function axisOf(
  svg: string,
  low: number,
  high: number,
  within: { readonly top: number; readonly bottom: number },
) {
  const lines = withClass(svg, 'figure-grid')
    .filter(({ at }) => at.y1 === at.y2)
    .map(({ at }) => Number(at.y1));
  const labelled = elementsOf(svg).filter(({ name, at }) => name === 'text' && at['text-anchor'] === 'end');
  const placeOf = (value: number) => {
    const text = labelled.find(
      (one) =>
        one.text === String(value) && Number(one.at.y) >= within.top && Number(one.at.y) <= within.bottom,
    );
    if (text === undefined) throw new Error(`no label ${value}`);
    return lines.reduce((best, one) =>
      Math.abs(one - Number(text.at.y)) < Math.abs(best - Number(text.at.y)) ? one : best,
    );
  };
  const [bottom, top] = [placeOf(low), placeOf(high)];
  return (value: number) => bottom + ((value - low) * (top - bottom)) / (high - low);
}

/** The tip of a triangle, which is the value itself. */
export function tipOf({ at }: Found): readonly [x: number, y: number] {
  return stretchesOf(at.d ?? '')[0]?.[0] ?? [Number.NaN, Number.NaN];
}

/** Texts under keys, and branches of them. */
type Branch = { readonly [key: string]: unknown };

/** Two parts of a catalogue as one: a branch that both have keeps the texts of both. No text stands in both. */
export function joined<One extends Branch, Other extends Branch>(one: One, other: Other): One & Other {
  const whole: Record<string, unknown> = { ...one };
  for (const [key, added] of Object.entries(other)) {
    const own = whole[key];
    whole[key] = isBranch(own) && isBranch(added) ? joined(own, added) : added;
  }
  return whole as One & Other;
}

function isBranch(one: unknown): one is Branch {
  return typeof one === 'object' && one !== null;
}

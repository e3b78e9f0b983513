import type { Flag } from '@evenfall/clinical';

/** A value of a sign with what is to be said of it. */
export type Flagged = {
  readonly id: string;
  /** The value that it is a claim of, where amendments dispute one; absent where it is its own. */
  readonly claimOf?: string;
  readonly sign: string;
  /** What it is called among the others, such as `148/92`. */
  readonly name: string;
  readonly flags: readonly Flag[];
};

/** What several values of a sign have alike: said once, with the values that it holds for, in their order. */
export type Shared = {
  readonly sign: string;
  readonly names: readonly string[];
  /** How many values that is: those that dispute one are one. */
  readonly values: number;
  /** Whether it holds for every value of its sign. */
  readonly isOfAll: boolean;
  readonly flags: readonly Flag[];
};

/**
 * Flags that two or more values of a sign have alike, and those that a value has alone.
 *
 * @param sentenceOf what is said of a flag: those that are said alike are alike, whatever they are rounded from
 */
export function flagsInCommon(
  values: readonly Flagged[],
  sentenceOf: (flag: Flag) => string,
): {
  readonly ownOf: (id: string) => readonly Flag[];
  readonly shared: readonly Shared[];
} {
  const keyOf = ({ sign }: Flagged, flag: Flag) => `${sign} ${flag.code} ${sentenceOf(flag)}`;
  const holders = new Map<string, { readonly flag: Flag; readonly of: Flagged[] }>();
  for (const value of values) {
    for (const flag of value.flags) {
      const key = keyOf(value, flag);
      const held = holders.get(key) ?? { flag, of: [] };
      if (!held.of.includes(value)) held.of.push(value);
      holders.set(key, held);
    }
  }
  const groups = new Map<string, { readonly of: readonly Flagged[]; readonly flags: Flag[] }>();
  for (const { flag, of } of holders.values()) {
    if (valuesIn(of) < 2) continue;
    const key = of.map(({ id }) => id).join(' ');
    const group = groups.get(key) ?? { of, flags: [] };
    group.flags.push(flag);
    groups.set(key, group);
  }
  return {
    ownOf: (id) =>
      values
        .filter((value) => value.id === id)
        .flatMap((value) =>
          value.flags.filter((flag) => valuesIn(holders.get(keyOf(value, flag))?.of ?? []) < 2),
        ),
    shared: [...groups.values()].map(({ of, flags }) => {
      const sign = of[0]?.sign ?? '';
      return {
        sign,
        names: of.map(({ name }) => name),
        values: valuesIn(of),
        isOfAll: values.filter((value) => value.sign === sign).length === of.length,
        flags,
      };
    }),
  };
}

function valuesIn(of: readonly Flagged[]): number {
  return new Set(of.map(({ id, claimOf = id }) => claimOf)).size;
}

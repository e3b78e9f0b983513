/** A choice of a place: that protocol version is in force from then on; null is none. */
export type ProtocolChoiceMade = {
  /** The entry that says so. */
  readonly entry: string;
  readonly version: string | null;
  readonly agent: string;
  /** RFC 3339, by the clock of who chose it. */
  readonly at: string;
  /** RFC 3339, by the server. */
  readonly recordedAt: string;
};

/** A protocol version as the place knows it. */
export type PlaceVersion = {
  readonly version: string;
  /** From 1, in the order in which versions were first put in force; null for one that never was. */
  readonly number: number | null;
  /** Each time it was put in force, oldest first. */
  readonly choices: readonly ProtocolChoiceMade[];
};

/**
 * The protocol versions of a place, the newest number first, then those that were kept and never put in force. A version
 * that is put in force again keeps its number. Source: DESIGN 2.3: the version is kept with every round.
 *
 * @param kept versions that are kept, by their hash
 * @param choices every choice, oldest first as the server took them
 */
export function placeVersions(
  kept: readonly string[],
  choices: readonly ProtocolChoiceMade[],
): readonly PlaceVersion[] {
  const chosen = [...new Set(choices.flatMap(({ version }) => (version === null ? [] : [version])))];
  const used = chosen.map((version, index) => ({
    version,
    number: index + 1,
    choices: choices.filter((one) => one.version === version),
  }));
  const unused = kept.filter((version) => !chosen.includes(version));
  return [...used.reverse(), ...unused.map((version) => ({ version, number: null, choices: [] }))];
}

/** So many players are shared out over every set of them; of more over seeded orders. */
const MOST_EXACT = 8;
/** Each of them also backwards: what a player adds early and what it adds late then weigh the same. */
const ORDERS = 16;

/**
 * What each of some players adds to a game, shared fairly: the mean over all orders of what it adds when it joins. The
 * shares sum to `value(all) - value(none)`. A set is a bit mask: bit i for player i.
 *
 * Exact for up to 8 players, each set asked once (2^8 games); for more a mean over 16 orders and the same backwards, which
 * sums exactly too.
 * Source: Shapley LS, A value for n-person games, 1953 (from memory).
 */
export function shapley(players: number, value: (set: number) => number): number[] {
  const known = new Map<number, number>();
  const worth = (set: number) => {
    let got = known.get(set);
    if (got === undefined) {
      got = value(set);
      known.set(set, got);
    }
    return got;
  };
  return players <= MOST_EXACT ? exact(players, worth) : sampled(players, worth);
}

function exact(players: number, worth: (set: number) => number): number[] {
  const weight = weightsOf(players);
  const shares = new Array<number>(players).fill(0);
  for (let set = 0; set < 2 ** players; set++) {
    const size = bitsOf(set);
    for (let i = 0; i < players; i++) {
      if ((set >> i) % 2 === 1) continue;
      shares[i] = (shares[i] as number) + (weight[size] as number) * (worth(set + 2 ** i) - worth(set));
    }
  }
  return shares;
}

/** Share of the orders in which a set of each size stands before a given player: s! (n - s - 1)! / n!. */
function weightsOf(players: number): number[] {
  const weights: number[] = [];
  let choices = 1;
  for (let size = 0; size < players; size++) {
    weights.push(1 / (players * choices));
    choices = (choices * (players - 1 - size)) / (size + 1);
  }
  return weights;
}

function bitsOf(set: number): number {
  let bits = 0;
  for (let left = set; left > 0; left = Math.floor(left / 2)) bits += left % 2;
  return bits;
}

function sampled(players: number, worth: (set: number) => number): number[] {
  const shares = new Array<number>(players).fill(0);
  const order = Array.from({ length: players }, (_, i) => i);
  let state = 0x2545f491;
  for (let round = 0; round < ORDERS; round++) {
    for (let i = players - 1; i > 0; i--) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const j = state % (i + 1);
      [order[i], order[j]] = [order[j] as number, order[i] as number];
    }
    for (const one of [order, order.toReversed()]) {
      let set = 0;
      for (const player of one) {
        const before = worth(set);
        set += 2 ** player;
        shares[player] = (shares[player] as number) + (worth(set) - before) / (2 * ORDERS);
      }
    }
  }
  return shares;
}

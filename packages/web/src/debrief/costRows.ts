import { type Cost, type Debrief, WORTH_TELLING_MMHG } from '@evenfall/practice';

type Both = { readonly systolic: number | null; readonly diastolic: number | null };

/** The lines of a table of costs as they are shown, to a tenth of a mmHg: `rows` and `rest` sum to `total` to the digit. */
export type CostRows = {
  readonly rows: readonly Cost[];
  /** Null: not to be told of either number. */
  readonly rest: Both | null;
  readonly total: Both | null;
};

const TENTHS = 10;

/** What each fault cost, what is left, and what that makes together: written minus what was to be had. */
export function costRows({
  costs: { costs, left },
  had,
  entered,
  isByMuffled,
}: Pick<Debrief, 'costs' | 'had' | 'entered' | 'isByMuffled'>): CostRows {
  const rows = costs.map((one) => ({
    ...one,
    systolic: tenth(one.systolic),
    diastolic: tenth(one.diastolic),
  }));
  const total = (of: 'systolic' | 'diastolic') => {
    const [written, best] =
      of === 'diastolic' && isByMuffled
        ? [entered.muffled ?? entered.diastolic, had.muffled]
        : [entered[of], had[of]];
    return left?.[of] == null || written === null || best === null ? null : tenth(written - best.mmHg);
  };
  const both = { systolic: total('systolic'), diastolic: total('diastolic') };
  if (both.systolic === null && both.diastolic === null) return { rows, rest: null, total: null };
  const rest = (of: 'systolic' | 'diastolic') => {
    const all = both[of];
    return all === null ? null : tenth(rows.reduce((so, one) => so - (one[of] ?? 0), all));
  };
  return { rows, rest: { systolic: rest('systolic'), diastolic: rest('diastolic') }, total: both };
}

/** What everything else moved back of what a fault moved, as it is shown; null: it moved the number no other way, or by too little to tell. */
export function movedBack(
  cost: Pick<Cost, 'systolic' | 'diastolic'>,
  result: Parameters<typeof costRows>[0],
): Both {
  const { total } = costRows(result);
  const back = (of: 'systolic' | 'diastolic') => {
    const [own, all] = [tenth(cost[of]), total?.[of] ?? null];
    if (own === null || all === null) return null;
    const others = tenth(all - own) ?? 0;
    return Math.abs(others) >= WORTH_TELLING_MMHG && others * own < 0 ? others : null;
  };
  return { systolic: back('systolic'), diastolic: back('diastolic') };
}

function tenth(mmHg: number | null): number | null {
  return mmHg === null ? null : Math.round(mmHg * TENTHS) / TENTHS;
}

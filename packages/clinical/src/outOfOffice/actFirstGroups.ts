import type { Flag } from '../contract/flag.js';

/** A reading with what of it an alert can be about; `pulse` null where it is not known. */
export type AlertedRow = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly pulse: number | null;
};

/** What is to be acted on: the readings it holds for, each in one group alone, and what is said of them. */
export type ActFirstGroup<Row, Said extends Flag = Flag> = {
  readonly rows: readonly Row[];
  readonly flags: readonly (Said | Flag)[];
};

/** Keys of an alert's figures that are a number of its reading, and the number they are. */
const NUMBERS = { systolic: 'systolic', diastolic: 'diastolic', pulsePerMinute: 'pulse' } as const;
const KEYS = Object.keys(NUMBERS) as (keyof typeof NUMBERS)[];

/**
 * Each alert under the readings that it is about. What is said of a pressure stands under every reading with a pressure as
 * dangerous, the first of which has its figures; what is said of a pulse under the reading with that pulse. Where two
 * things are said of one reading, both stand under it: no reading stands twice.
 *
 * @param rows every reading and refused row, in order
 * @param found those of `rows` whose pressure is dangerous by itself, with what is said where no alert says it
 */
export function actFirstGroups<Row extends AlertedRow, Said extends Flag>(
  rows: readonly Row[],
  found: readonly { readonly row: Row; readonly flag: Flag }[],
  alerts: readonly Said[],
): ActFirstGroup<Row, Said>[] {
  const codes = [...new Set(found.map(({ flag }) => flag.code))];
  const dangers = codes.map((code) => found.filter(({ flag }) => flag.code === code));
  const owned = alerts.map((alert) => ({ alert, row: rows.find((row) => isOf(alert, row)) }));
  const isOfPressure = ({ figures }: Flag) =>
    figures.systolic !== undefined || figures.diastolic !== undefined;
  const own = (danger: (typeof dangers)[number]) =>
    owned.filter(({ alert, row }) => isOfPressure(alert) && danger.some((one) => same(one.row, row)));
  const placed = new Set(dangers.flatMap(own));
  const said = [
    ...dangers.map((danger) => {
      const alerted = own(danger).map(({ alert }) => alert);
      const [first] = danger;
      return {
        rows: danger.map(({ row }) => row),
        flags: alerted.length > 0 || first === undefined ? alerted : [first.flag],
      };
    }),
    ...owned
      .filter((one) => !placed.has(one))
      .map(({ alert, row }) => ({ rows: row === undefined ? [] : [row], flags: [alert] })),
  ];
  return said.reduce<ActFirstGroup<Row, Said>[]>((groups, one) => joined(groups, one, rows), []);
}

/** The groups with one more, made one with those that have a reading of it. */
function joined<Row, Said extends Flag>(
  groups: readonly ActFirstGroup<Row, Said>[],
  more: ActFirstGroup<Row, Said>,
  order: readonly Row[],
): ActFirstGroup<Row, Said>[] {
  const isShared = (group: ActFirstGroup<Row, Said>) => group.rows.some((row) => more.rows.includes(row));
  const [first] = groups.filter(isShared);
  if (first === undefined) return [...groups, more];
  const all = [...groups.filter(isShared), more];
  const within = new Set(all.flatMap((group) => group.rows));
  const one = {
    rows: order.filter((row) => within.has(row)),
    flags: [...new Set(all.flatMap((group) => group.flags))],
  };
  return groups.flatMap((group) => (group === first ? [one] : isShared(group) ? [] : [group]));
}

/** Whether the figures of an alert that are numbers of a reading are those of this one; an alert without any is of none. */
function isOf({ figures }: Flag, row: AlertedRow): boolean {
  const keys = KEYS.filter((key) => figures[key] !== undefined);
  return keys.length > 0 && keys.every((key) => figures[key] === row[NUMBERS[key]]);
}

function same(one: AlertedRow, other: AlertedRow | undefined): boolean {
  return other !== undefined && one.systolic === other.systolic && one.diastolic === other.diastolic;
}

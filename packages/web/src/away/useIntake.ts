import type { HomeRules } from '@evenfall/clinical';
import { areSameHeadings, type SeriesColumn } from '@evenfall/exchange';
import { diariesOut, type StoredEntry } from '@evenfall/record';
import { useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { localDate } from '../ports/stampAt.js';
import type { Kept } from '../store/kept.js';
import { isUnderWay, unfinishedIn } from './askedOfRow.js';
import { intakeForm } from './begun.js';
import { columnsIn, columnsText, intakeOf } from './intake.js';
import { GRID_CELLS } from './typedCell.js';
import { type CellPlace, cellField, dayLater, halfTypedIn, typedIn } from './weekGrid.js';

/** When people usually measure, until somebody says otherwise. Source: out-of-office handbook 3 (morning, evening). */
const USUALLY = { morning: '07:00', evening: '19:00' };

/** The form of what is brought in, what it comes to so far, and the ways to change it. */
export function useIntake(person: string, rules: HomeRules, entries: readonly StoredEntry[]) {
  const { store, clock } = useApp();
  const { at, zone } = clock.stamp();
  const diaries = diariesOut(entries);
  const today = localDate({ at, zone, asEntered: null });
  // A link from a diary leads to its readings; else it is the one that is due first of those that have begun.
  const named = new URLSearchParams(window.location.search).get('diary');
  const diary = diaries.find(({ entry }) => entry === named) ?? diaries.find(({ from }) => from <= today);
  const days = diary?.days ?? rules.daysAsked;
  const name = intakeForm(person);
  const form = useForm(name, {
    of: 'home',
    way: 'typed',
    firstDay: diary?.from ?? dayLater(today, -days) ?? '',
    days: String(days),
    diary: diary?.entry ?? '',
    ...USUALLY,
  });
  const own = columnsIn(form.text('columns'));
  const known = useKept(({ kept }) => kept.seriesColumns);
  const [typing, setTyping] = useState<CellPlace | null>(null);
  const half = halfTypedIn(typing, form.text);
  const halfField = half === null ? null : cellField(half.row, half.cell);
  // Of a number that is still being typed nothing is made: 14 on the way to 142 is no reading.
  const whole = (field: string) => (field === halfField ? '' : form.text(field));
  // Nor of a reading whose other pressure is still to come, while somebody types in it.
  const isOn = typing !== null && isUnderWay(typedIn(typing.row, whole));
  const blank = new Set(isOn ? GRID_CELLS.map((cell) => cellField(typing.row, cell)) : []);
  const text = (field: string) => (blank.has(field) ? '' : whole(field));
  const found = intakeOf(text, zone, rules, own === null ? null : { headings: null, columns: own });
  const headings = found.read?.mapping.headings ?? null;
  const before =
    own === null && found.way !== 'typed' && headings !== null
      ? known?.find((one) => areSameHeadings(one.headings, headings))
      : undefined;
  const remembered = before === undefined ? null : columnsIn(before.columns);
  const intake = remembered === null ? found : intakeOf(text, zone, rules, { headings, columns: remembered });

  /** Sets what each column is, and remembers it on this device for tables with the same headings. */
  const setColumns = (columns: readonly (SeriesColumn | null)[]) => {
    form.set('columns', columnsText(columns));
    form.set('sure', 'yes');
    if (headings === null) return;
    store.change((state) => ({
      ...state,
      kept: withColumns(state.kept, headings, columnsText(columns)),
    }));
  };
  return {
    form,
    name,
    intake,
    zone,
    setColumns,
    isRemembered: remembered !== null,
    diaries,
    typing,
    setTyping,
    unfinished: unfinishedIn(typing, form.text),
  };
}

export type IntakeState = ReturnType<typeof useIntake>;

const MOST_REMEMBERED = 20;

/** Remembers what the columns of a table are, the newest first. */
export function withColumns(kept: Kept, headings: readonly string[], columns: string): Kept {
  const others = (kept.seriesColumns ?? []).filter((one) => !areSameHeadings(one.headings, headings));
  return { ...kept, seriesColumns: [{ headings, columns }, ...others].slice(0, MOST_REMEMBERED) };
}

import { actFirstIn, completedYears, isChild, type RoundFacts } from '@evenfall/clinical';
import { LONGEST_NOTE } from '@evenfall/record';
import { type ClipboardEvent, type KeyboardEvent, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';
import { dayText } from '../app/times.js';
import { DayField } from '../facts/DayField.js';
import { Field } from '../parts/Field.js';
import { askedOfRow, holdsDangerBack, sureField } from './askedOfRow.js';
import { MOST_GRID_DAYS } from './intake.js';
import { pressureText } from './readingText.js';
import { afterKey, GRID_CELLS, type GridCell, isImpossible, readingsIn, type Typed } from './typedCell.js';
import type { IntakeState } from './useIntake.js';
import {
  COLUMN_OF,
  cellField,
  cellId,
  dayLater,
  GRID_PARTS,
  type GridPart,
  type GridRow,
  noteField,
  sittingTime,
  timeField,
  typedIn,
} from './weekGrid.js';

/** A week typed by keyboard alone: digits flow on, Enter and arrows move, a whole reading can be pasted anywhere. */
export function WeekGrid({ state, facts }: { readonly state: IntakeState; readonly facts: RoundFacts }) {
  const { words } = useApp();
  const { form, intake, zone } = state;
  const grid = useRef<HTMLDivElement>(null);
  const { rows } = intake;
  const days = [...new Set(rows.map(({ day }) => day))];

  const cellAt = (row: number, cell: number) =>
    grid.current?.querySelector<HTMLInputElement>(`[data-row="${row}"][data-cell="${cell}"]`) ?? null;
  const goTo = (row: number, cell: number) => {
    const found = cellAt(row, cell);
    found?.focus();
    found?.select();
    return found !== null;
  };
  const goOn = (row: number, cell: number, by: 1 | -1) => {
    const at = row * GRID_CELLS.length + cell + by;
    return goTo(Math.floor(at / GRID_CELLS.length), (at + GRID_CELLS.length) % GRID_CELLS.length);
  };
  const fill = (from: number, readings: readonly Typed[]) => {
    readings.forEach((typed, k) => {
      const row = rows[from + k];
      if (row === undefined) return;
      for (const cell of GRID_CELLS) form.set(cellField(row, cell), typed[cell]);
    });
    const next = Math.min(from + readings.length, rows.length - 1);
    goTo(next, from + readings.length > rows.length - 1 ? GRID_CELLS.length - 1 : 0);
  };

  const onKey = (event: KeyboardEvent<HTMLInputElement>, row: number, cell: number) => {
    const { key, currentTarget: input, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey) return;
    const isAll = input.selectionStart === 0 && input.selectionEnd === input.value.length;
    const isAtStart = input.selectionStart === 0 && (input.selectionEnd === 0 || isAll);
    const isAtEnd =
      input.selectionEnd === input.value.length && (isAll || input.selectionStart === input.selectionEnd);
    const went =
      key === 'Enter'
        ? goOn(row, cell, event.shiftKey ? -1 : 1)
        : key === 'ArrowDown'
          ? goTo(row + 1, cell)
          : key === 'ArrowUp'
            ? goTo(row - 1, cell)
            : key === 'ArrowLeft' && isAtStart
              ? goOn(row, cell, -1)
              : key === 'ArrowRight' && isAtEnd
                ? goOn(row, cell, 1)
                : key === 'Backspace' && input.value === ''
                  ? goOn(row, cell, -1)
                  : false;
    if (went || key === 'Enter') event.preventDefault();
  };
  const onType = (at: number, cell: number, text: string) => {
    const row = rows[at];
    const name = GRID_CELLS[cell];
    if (row === undefined || name === undefined) return;
    const whole = readingsIn(text);
    if (whole !== null) {
      fill(at, whole);
      return;
    }
    const { text: kept, isFull } = afterKey(name, text);
    form.set(cellField(row, name), kept);
    if (!isFull) return;
    // A number that cannot be is seen at once, and nothing that follows it lands in the wrong place.
    if (!isImpossible(name, { ...typedIn(row, form.text), [name]: kept })) goOn(at, cell, 1);
  };
  const onPaste = (event: ClipboardEvent<HTMLInputElement>, at: number) => {
    const found = readingsIn(event.clipboardData.getData('text'));
    if (found === null) return;
    event.preventDefault();
    fill(at, found);
  };

  return (
    <>
      <p className="soft">{words.sentence('away.gridHint')}</p>
      <div className="away-grid-head">
        <DayField
          label={words.sentence('away.firstDay')}
          value={form.text('firstDay')}
          onChange={(day) => form.set('firstDay', day)}
          wrong={form.text('firstDay') === '' ? words.sentence('away.firstDayMissing') : null}
        />
        <Field label={words.sentence('away.days')}>
          {(control) => (
            <select
              {...control}
              value={form.text('days')}
              onChange={({ target }) => form.set('days', target.value)}
            >
              {Array.from({ length: MOST_GRID_DAYS }, (_, k) => String(k + 1)).map((one) => (
                <option key={one} value={one}>
                  {words.say.short(Number(one))}
                </option>
              ))}
            </select>
          )}
        </Field>
        {GRID_PARTS.map((part) => (
          <Field key={part} label={words.sentence(`away.${part}About`)}>
            {(control) => (
              <input
                {...control}
                type="time"
                value={form.text(part)}
                onChange={({ target }) => form.set(part, target.value)}
              />
            )}
          </Field>
        ))}
      </div>
      <p className="soft small">
        {words.sentence('away.byClockOf', { text: form.text('zone') === '' ? zone : form.text('zone') })}
      </p>
      <div className="away-grid" ref={grid}>
        {days.map((day) => {
          const date = dayLater(form.text('firstDay'), day - 1);
          const name = words.sentence('away.day', { day, text: date === null ? '' : dayText(date, words) });
          return (
            <section key={day} className="away-day" aria-label={name}>
              <h3>{name}</h3>
              {GRID_PARTS.map((part) => (
                <Sitting
                  key={part}
                  day={day}
                  part={part}
                  dayName={name}
                  state={state}
                  facts={facts}
                  onType={onType}
                  onKey={onKey}
                  onPaste={onPaste}
                />
              ))}
              <DayNote day={day} dayName={name} state={state} />
            </section>
          );
        })}
      </div>
    </>
  );
}

/** What stands on paper beside the readings of a day: folded away where nothing is written there. */
function DayNote({ day, dayName, state: { form, intake } }: DayNoteProps) {
  const { words } = useApp();
  const text = form.text(noteField(day));
  const [isOpen] = useState(text !== '');
  const hasReading = intake.rows.some(
    (row) => row.day === day && GRID_CELLS.some((cell) => typedIn(row, form.text)[cell] !== ''),
  );
  return (
    <details className="folded away-day-note" open={isOpen}>
      <summary>{words.sentence('away.dayNote')}</summary>
      <input
        type="text"
        aria-label={words.sentence('away.dayNoteOf', { text: dayName })}
        maxLength={LONGEST_NOTE}
        value={text}
        onChange={({ target }) => form.set(noteField(day), target.value)}
      />
      {text.trim() === '' || hasReading ? null : (
        <p className="small notice">{words.sentence('away.dayNoteAlone')}</p>
      )}
    </details>
  );
}

type DayNoteProps = { readonly day: number; readonly dayName: string; readonly state: IntakeState };

type SittingProps = {
  readonly day: number;
  readonly part: GridPart;
  readonly dayName: string;
  readonly state: IntakeState;
  readonly facts: RoundFacts;
  readonly onType: (row: number, cell: number, text: string) => void;
  readonly onKey: (event: KeyboardEvent<HTMLInputElement>, row: number, cell: number) => void;
  readonly onPaste: (event: ClipboardEvent<HTMLInputElement>, row: number) => void;
};

/** The readings of one morning or evening, with the time of it. */
function Sitting({ day, part, dayName, state, facts, onType, onKey, onPaste }: SittingProps) {
  const { words } = useApp();
  const { form, intake } = state;
  const { at, isAbout } = sittingTime({ day, part }, form.text);
  const rows = intake.rows.flatMap((row, index) =>
    row.day === day && row.part === part ? [{ row, index }] : [],
  );
  const name = words.sentence(`away.${part}`);
  return (
    <fieldset className="away-sitting">
      <legend className="unseen">{name}</legend>
      <label className="away-time">
        <span aria-hidden="true">{name}</span>
        <span className="small soft">{words.sentence(isAbout ? 'away.about' : 'away.at')}</span>
        <input
          type="time"
          tabIndex={-1}
          aria-label={words.sentence('away.timeOf', { day: dayName, part: name })}
          value={at}
          onChange={({ target }) => form.set(timeField({ day, part }), target.value)}
        />
      </label>
      <div className="away-row away-heads small soft" aria-hidden="true">
        <span />
        <span>{words.sentence('away.systolic')}</span>
        <span />
        <span>{words.sentence('away.diastolic')}</span>
        <span>{words.sentence('away.pulse')}</span>
      </div>
      {rows.map(({ row, index }) => (
        <div key={row.reading} className="away-row">
          <span className="away-number small soft">{words.say.short(row.reading)}</span>
          {GRID_CELLS.map((cell, k) => (
            <Cell
              key={cell}
              row={row}
              cell={cell}
              label={words.sentence('away.cell', {
                day: dayName,
                part: name,
                reading: row.reading,
                cell: words.sentence(`away.${cell}`),
              })}
              state={state}
              at={[index, k]}
              onType={onType}
              onKey={onKey}
              onPaste={onPaste}
            />
          ))}
          <Wrong row={row} state={state} />
          <Asked
            row={row}
            state={state}
            onSettled={(cell) => document.getElementById(cellId(row, cell))?.focus()}
          />
          <Danger
            row={row}
            state={state}
            facts={facts}
            place={words.sentence('away.gridRow', { day, part: name, reading: row.reading })}
          />
        </div>
      ))}
    </fieldset>
  );
}

/** What is wrong with a row, cell by cell, where it is typed. */
function Wrong({
  row,
  state: { form, intake, typing },
}: Pick<SittingProps, 'state'> & { readonly row: GridRow }) {
  const { words } = useApp();
  const refused = intake.read?.refused.find(({ line }) => isSame(intake.table?.rowOfLine.get(line), row));
  if (refused === undefined) return null;
  const isTurned = askedOfRow(row, intake.rows, form.text).some(({ asks }) => asks === 'other-way-round');
  return refused.problems.map((problem) => {
    // That is asked below, with what answers it.
    if (isTurned && problem.expected === 'diastolic-below-this') return null;
    const cell = GRID_CELLS.find((one) => COLUMN_OF[one] === problem.column);
    const { expected } = words.problem(problem);
    const { got } = problem;
    const came = got === null || got === '' ? words.sentence('bring.nothingCame') : `“${got}”`;
    const isHere = typing !== null && isSame(typing.row, row) && typing.cell === cell;
    return (
      <p
        key={`${problem.column} ${problem.code}`}
        className="away-stopped"
        role={isHere ? 'alert' : undefined}
      >
        {cell === undefined ? null : <strong>{words.sentence(`away.${cell}`)}: </strong>}
        {unbroken(words.sentence('away.expectedCame', { expected: expected ?? '', came }))}
      </p>
    );
  });
}

function isSame(one: GridRow | undefined, other: GridRow): boolean {
  return one?.day === other.day && one.part === other.part && one.reading === other.reading;
}

type AskedProps = Pick<SittingProps, 'state'> & {
  readonly row: GridRow;
  /** It was answered: typing goes on there. */
  readonly onSettled: (cell: GridCell) => void;
};

/** What is asked about the numbers of a row, each answered by one touch; nothing is changed before. */
function Asked({ row, state: { form, intake }, onSettled }: AskedProps) {
  const { words } = useApp();
  return askedOfRow(row, intake.rows, form.text).map((asked) => {
    if (asked.asks === 'other-way-round') {
      const pressure = pressureText(asked, words);
      return (
        <div key={asked.asks} className="away-asked" role="status">
          <p>{words.sentence('away.otherWayRound')}</p>
          <button
            type="button"
            className="button"
            onClick={() => {
              form.set(cellField(row, 'systolic'), String(asked.systolic));
              form.set(cellField(row, 'diastolic'), String(asked.diastolic));
              onSettled('pulse');
            }}
          >
            {words.sentence('away.itIs', { text: pressure })}
          </button>
        </div>
      );
    }
    const { cell, value, usual } = asked;
    const name = words.sentence(`away.${cell}`);
    return (
      <div key={cell} className="away-asked" role="status">
        <p id={`${cellId(row, cell)}-asked`}>
          <strong>{name}: </strong>
          {words.sentence('away.digitMissing', { typed: value, usual })}
        </p>
        <div className="buttons">
          <button type="button" className="button" onClick={() => onSettled(cell)}>
            {words.sentence('away.typeAgain')}
          </button>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => {
              form.set(sureField(row, cell), String(value));
              onSettled(cell);
            }}
          >
            {words.sentence('away.itIs', { text: words.say.short(value) })}
          </button>
        </div>
      </div>
    );
  });
}

type DangerProps = Pick<SittingProps, 'state' | 'facts'> & { readonly row: GridRow; readonly place: string };

/** That a reading which was just typed is to be acted on, in one line with its place: what to do stands once, where all of them are. */
function Danger({ row, state: { form, intake }, facts, place }: DangerProps) {
  const { words } = useApp();
  const typed = readingOf(intake, row);
  const { systolic, diastolic } = typedIn(row, form.text);
  if (typed === null || systolic === '' || diastolic === '') return null;
  if (holdsDangerBack(askedOfRow(row, intake.rows, form.text))) return null;
  const isOfChild = isChild(facts.ageMonths === null ? null : completedYears(facts.ageMonths));
  const [first] = actFirstIn([typed], facts.isPregnant === true, isOfChild);
  if (first === undefined) return null;
  return (
    <p className="away-danger" role="alert">
      {words.sentence('away.dangerAt', { text: place })} <strong>{pressureText(first.row, words)}</strong>.{' '}
      <a href="#away-act-first">{words.sentence('away.dangerBelow')}</a>
    </p>
  );
}

/** The numbers of a row of the grid, whether or not it can be used; null while nothing of it is read. */
function readingOf({ read, table }: IntakeState['intake'], row: GridRow) {
  const isRow = (line: number | undefined) => line !== undefined && isSame(table?.rowOfLine.get(line), row);
  return (
    read?.readings.find(({ index }) => isRow(read.lines[index - 1])) ??
    read?.refused.find(({ line }) => isRow(line)) ??
    null
  );
}

type CellProps = Pick<SittingProps, 'state' | 'onType' | 'onKey' | 'onPaste'> & {
  readonly row: GridRow;
  readonly cell: GridCell;
  readonly label: string;
  readonly at: readonly [row: number, cell: number];
};

const PLACES = { systolic: '142', diastolic: '88', pulse: '74' } as const;

function Cell({ row, cell, label, state, at: [index, k], onType, onKey, onPaste }: CellProps) {
  const { form, intake, setTyping } = state;
  return (
    <>
      {cell === 'diastolic' ? <span aria-hidden="true">/</span> : null}
      <input
        type="text"
        inputMode="numeric"
        autoComplete="off"
        className="away-cell"
        id={cellId(row, cell)}
        data-row={index}
        data-cell={k}
        aria-label={label}
        aria-invalid={isRefused(intake, row, cell)}
        placeholder={index === 0 ? PLACES[cell] : undefined}
        value={form.text(cellField(row, cell))}
        onInput={({ currentTarget }) => onType(index, k, currentTarget.value)}
        onKeyDown={(event) => onKey(event, index, k)}
        onPaste={(event) => onPaste(event, index)}
        onFocus={({ currentTarget }) => {
          setTyping({ row, cell });
          currentTarget.select();
        }}
        onBlur={() => setTyping(null)}
      />
    </>
  );
}

/** Whether a cell is what a row of the grid was refused for. */
function isRefused({ read, table }: IntakeState['intake'], row: GridRow, cell: GridCell): boolean {
  return (
    read?.refused.some(
      ({ line, problems }) =>
        isSame(table?.rowOfLine.get(line), row) && problems.some(({ column }) => column === COLUMN_OF[cell]),
    ) ?? false
  );
}

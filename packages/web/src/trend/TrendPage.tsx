import type { Posture, RoundSign, Side } from '@evenfall/clinical';
import {
  projectChart,
  projectTrend,
  signsOfTrend,
  type TrendRound,
  trendFromElsewhere,
} from '@evenfall/record';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { useEquipment } from '../equipment/useEquipment.js';
import { Asking } from '../parts/Asking.js';
import { Field } from '../parts/Field.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { loadRules } from '../server/load.js';
import { bandsOf } from './bands.js';
import { TrendFigure } from './TrendFigure.js';
import { TrendKey } from './TrendKey.js';
import { TrendTable } from './TrendTable.js';
import { elsewhereText, inChart, readText } from './trendText.js';
import {
  between,
  lengthOf,
  moved,
  roundsIn,
  SPANS,
  type Span,
  type SpanId,
  spanOf,
  wholeSpan,
  zoomed,
} from './view.js';

/** What of a trend is drawn. Null shows every posture, or either arm. */
type Filter = {
  readonly hidden: readonly RoundSign[];
  readonly posture: Posture | null;
  readonly side: Side | null;
  /** Also what other systems and tables say. */
  readonly hasElsewhere: boolean;
};

const EVERYTHING: Filter = { hidden: [], posture: null, side: null, hasElsewhere: true };
const STEP = 0.5;

/** A person's values over time: the drawing, what was measured at one time read out, and every number behind it. */
export function TrendPage({ person }: { readonly person: string }) {
  const app = useApp();
  const { words, clock } = app;
  const { asked, again } = useRecord(person);
  const rulesOf = useRulesOf();
  const { equipment } = useEquipment();
  useEffect(() => void loadRules(app), [app]);
  const record = asked.value;
  const entries = useMemo(() => (record === null ? [] : entriesIn(record)), [record]);
  const chart = useMemo(() => projectChart(entries), [entries]);
  const all = [...projectTrend(chart, rulesOf, equipment?.gauges), ...trendFromElsewhere(chart)].toSorted(
    (a, b) => Date.parse(a.at) - Date.parse(b.at),
  );
  const name = nameIn(record) ?? words.sentence('people.erased');
  const title = words.sentence('trend.title');
  return (
    <Page
      title={record === null ? title : `${title}: ${name}`}
      under={<IdentityOf record={record} />}
      back={{ href: `/people/${person}`, text: name }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {() =>
          all.length === 0 ? (
            <p className="soft">{words.sentence('trend.none')}</p>
          ) : (
            <>
              <Trend all={all} person={person} />
              <p className="small soft printed-only">
                {words.sentence('trend.printed', { text: stampText(clock.stamp(), words) })}
              </p>
            </>
          )
        }
      </Asking>
    </Page>
  );
}

type TrendProps = { readonly all: readonly TrendRound[]; readonly person: string };

function Trend({ all, person }: TrendProps) {
  const { words } = useApp();
  const [filter, setFilter] = useState(EVERYTHING);
  const [chosen, setSpan] = useState<Span | null>(null);
  const [spanId, setSpanId] = useState<SpanId | null>('all');
  const [read, setRead] = useState<string | null>(null);
  const whole = wholeSpan(all);
  if (whole === null) return <p className="soft">{words.sentence('trend.none')}</p>;
  const span = chosen ?? whole;
  const rounds = roundsIn(filtered(all, filter), span);
  const bands = bandsOf(rounds, words.say.manner.temperature);
  const found = rounds.findIndex(({ round }) => round === read);
  const at = found === -1 ? rounds.length - 1 : found;
  const shown = rounds[at];
  const see = (next: Span) => {
    setSpan(next);
    setSpanId(null);
  };
  return (
    <>
      <Filters all={all} filter={filter} onChange={setFilter}>
        <Field label={words.sentence('trend.span')}>
          {(control) => (
            <select
              {...control}
              value={spanId ?? ''}
              onChange={({ target }) => {
                const id = target.value as SpanId;
                setSpanId(id);
                setSpan(spanOf(id, whole));
              }}
            >
              {spanId === null ? <option value="">–</option> : null}
              {(Object.keys(SPANS) as SpanId[]).map((id) => (
                <option key={id} value={id}>
                  {words.sentence(`trend.${id}`)}
                </option>
              ))}
            </select>
          )}
        </Field>
      </Filters>
      <div className="buttons trend-buttons">
        <Move
          text={words.sentence('trend.closer')}
          onMove={() => see(zoomed(span, STEP, middle(span), whole))}
        />
        <Move
          text={words.sentence('trend.wider')}
          isOff={lengthOf(span) >= lengthOf(whole)}
          onMove={() => see(zoomed(span, 1 / STEP, middle(span), whole))}
        />
        <Move
          text={words.sentence('trend.earlier')}
          isOff={span.from <= whole.from}
          onMove={() => see(moved(span, -STEP, whole))}
        />
        <Move
          text={words.sentence('trend.later')}
          isOff={span.to >= whole.to}
          onMove={() => see(moved(span, STEP, whole))}
        />
        <button type="button" className="button button-quiet" onClick={() => window.print()}>
          {words.sentence('trend.print')}
        </button>
      </div>
      {shown === undefined || bands.length === 0 ? (
        <p className="notice">{words.sentence('trend.noneIn')}</p>
      ) : (
        <section className="trend-whole" aria-label={words.sentence('trend.title')}>
          <TrendFigure
            bands={bands}
            rounds={rounds}
            span={span}
            at={at}
            label={words.sentence('trend.label', {
              rounds: rounds.filter(({ elsewhere }) => elsewhere === null).length,
              elsewhere: rounds.filter(({ elsewhere }) => elsewhere !== null).length,
              from: stampText(rounds[0] ?? shown, words),
              to: stampText(rounds.at(-1) ?? shown, words),
            })}
            onRead={(next) => setRead(rounds[next]?.round ?? null)}
            onPart={(one, other) => see(between(one, other, whole))}
          />
          <Readout
            rounds={rounds}
            at={at}
            person={person}
            onRead={(next) => setRead(rounds[next]?.round ?? null)}
          />
          <TrendKey rounds={rounds} />
        </section>
      )}
      <h2>{words.sentence('trend.table')}</h2>
      <TrendTable rounds={rounds} person={person} />
    </>
  );
}

type ReadoutProps = {
  readonly rounds: readonly TrendRound[];
  readonly at: number;
  readonly person: string;
  readonly onRead: (at: number) => void;
};

/** A native line along which the rounds are gone through by thumb or keys, and what was measured in the one chosen. */
function Readout({ rounds, at, person, onRead }: ReadoutProps) {
  const { words } = useApp();
  const round = rounds[at];
  if (round === undefined) return null;
  const when = stampText(round, words);
  return (
    <div className="trend-readout">
      <label className="not-printed">
        <span className="small soft">{words.sentence('trend.round')}</span>
        <input
          type="range"
          min={0}
          max={rounds.length - 1}
          value={at}
          aria-valuetext={when}
          onChange={({ target }) => onRead(target.valueAsNumber)}
        />
      </label>
      <output className="trend-says not-printed">
        <strong>{when}</strong>
        {signsOfTrend([round]).map((sign) => (
          <span key={sign}>
            {signText(sign, words)} {readText(round, sign, words)}
          </span>
        ))}
        {round.elsewhere === null ? null : <span>{elsewhereText(round.elsewhere, words)}</span>}
        {round.isNotReliedOn ? (
          <span>{words.sentence('trend.notReliedOn')}</span>
        ) : round.isPreliminary ? (
          <span>{words.sentence('people.preliminary')}</span>
        ) : null}
      </output>
      <Link className="small not-printed round-link" href={inChart(person, round)}>
        {words.sentence(round.elsewhere === null ? 'trend.toRound' : 'trend.toElsewhere')}
      </Link>
    </div>
  );
}

type FiltersProps = {
  readonly all: readonly TrendRound[];
  readonly filter: Filter;
  readonly onChange: (filter: Filter) => void;
  readonly children: ReactNode;
};

/** What is drawn; a choice is offered only where there is one. */
function Filters({ all, filter, onChange, children }: FiltersProps) {
  const { words } = useApp();
  const signs = signsOfTrend(all);
  const isMixed = all.some(({ elsewhere }) => elsewhere !== null);
  const places = all.flatMap(({ points }) =>
    points.flatMap(({ value }) => (value.of === 'pressure' ? [value] : [])),
  );
  const postures = [...new Set(places.flatMap(({ posture }) => posture ?? []))];
  const sides = [...new Set(places.flatMap(({ side }) => side ?? []))];
  return (
    <div className="trend-filters not-printed">
      {signs.length < 2 && !isMixed ? null : (
        <fieldset className="trend-signs">
          <legend>{words.sentence('trend.show')}</legend>
          {isMixed ? (
            <label className="trend-sign">
              <input
                type="checkbox"
                checked={filter.hasElsewhere}
                onChange={({ target }) => onChange({ ...filter, hasElsewhere: target.checked })}
              />
              {words.sentence('trend.fromElsewhere')}
            </label>
          ) : null}
          {signs.map((sign) => (
            <label key={sign} className="trend-sign">
              <input
                type="checkbox"
                checked={!filter.hidden.includes(sign)}
                onChange={({ target }) =>
                  onChange({
                    ...filter,
                    hidden: target.checked
                      ? filter.hidden.filter((one) => one !== sign)
                      : [...filter.hidden, sign],
                  })
                }
              />
              {signText(sign, words)}
            </label>
          ))}
        </fieldset>
      )}
      <div className="trend-selects">
        {children}
        {postures.length < 2 ? null : (
          <Field label={words.sentence('trend.posture')}>
            {(control) => (
              <select
                {...control}
                value={filter.posture ?? ''}
                onChange={({ target }) =>
                  onChange({ ...filter, posture: postures.find((one) => one === target.value) ?? null })
                }
              >
                <option value="">{words.sentence('trend.everyPosture')}</option>
                {postures.map((posture) => (
                  <option key={posture} value={posture}>
                    {words.sentence(`pressure.${posture}Posture`)}
                  </option>
                ))}
              </select>
            )}
          </Field>
        )}
        {sides.length < 2 ? null : (
          <Field label={words.sentence('trend.side')}>
            {(control) => (
              <select
                {...control}
                value={filter.side ?? ''}
                onChange={({ target }) =>
                  onChange({ ...filter, side: sides.find((one) => one === target.value) ?? null })
                }
              >
                <option value="">{words.sentence('trend.everySide')}</option>
                {sides.map((side) => (
                  <option key={side} value={side}>
                    {words.sentence(`pressure.${side}Side`)}
                  </option>
                ))}
              </select>
            )}
          </Field>
        )}
      </div>
    </div>
  );
}

type MoveProps = { readonly text: string; readonly isOff?: boolean; readonly onMove: () => void };

function Move({ text, isOff = false, onMove }: MoveProps) {
  return (
    <button type="button" className="button button-quiet" disabled={isOff} onClick={onMove}>
      {text}
    </button>
  );
}

/** The values that a filter lets through. An average of every reading stands only where every reading does. */
function filtered(
  rounds: readonly TrendRound[],
  { hidden, posture, side, hasElsewhere }: Filter,
): readonly TrendRound[] {
  return rounds.flatMap((round): TrendRound[] => {
    if (round.elsewhere !== null && !hasElsewhere) return [];
    const points = round.points.filter(
      ({ value }) =>
        !hidden.includes(value.of) &&
        (value.of !== 'pressure' ||
          ((posture === null || value.posture === posture) && (side === null || value.side === side))),
    );
    const isWhole = points.length === round.points.length || points.length === 0;
    const pressures = (of: TrendRound['points']) => of.filter(({ value }) => value.of === 'pressure').length;
    const keepsAverage = isWhole || pressures(points) === pressures(round.points);
    return points.length === 0 ? [] : [{ ...round, points, average: keepsAverage ? round.average : null }];
  });
}

function middle({ from, to }: Span): number {
  return (from + to) / 2;
}

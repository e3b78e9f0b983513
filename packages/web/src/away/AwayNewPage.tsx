import type { PersonRecord, PersonRow } from '@evenfall/api';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useInForce, useRecord } from '../round/useRound.js';
import type { Asked } from '../store/known.js';
import { IntakeForm } from './IntakeForm.js';

/** Readings that were taken away from the clinic are brought in: typed, pasted or as a file. */
export function AwayNewPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const inForce = useInForce();
  const rows = useKept(({ known }) => known.people.value);
  const withoutChart = withoutChartOf(asked, person, rows);
  const who = asked.value ?? withoutChart;
  const name = nameIn(who) ?? words.sentence('people.erased');
  const title = words.sentence('away.newTitle');
  return (
    <Page
      title={title}
      under={
        <>
          <p className="identity-name">{nameIn(who)}</p>
          {who === withoutChart && who?.identity === null ? null : <IdentityOf record={who} />}
        </>
      }
      back={{ href: `/people/${person}`, text: who?.identity == null ? words.sentence('chart.title') : name }}
    >
      {withoutChart === null ? (
        <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')} away="line">
          {(record) =>
            record.identity === null ? (
              <p className="notice">{words.sentence('person.erased')}</p>
            ) : (
              <Asking asked={inForce.asked} again={inForce.again} away="not">
                {(rules) => <IntakeForm person={person} record={record} inForce={rules} />}
              </Asking>
            )
          }
        </Asking>
      ) : (
        <>
          <p className="notice" role="status">
            {words.sentence(withoutChart.identity === null ? 'away.nobodyKnown' : 'away.withoutChart')}
          </p>
          <IntakeForm
            person={person}
            record={withoutChart}
            inForce={inForce.asked.value ?? NOTHING_CHOSEN}
            isWithoutRules={inForce.asked.value === null}
          />
        </>
      )}
    </Page>
  );
}

/**
 * A record without a chart, for readings that are typed while the server is away and the chart was never fetched: who it is,
 * as the list has it, and nothing else. Null where the chart is at hand, or is still asked for.
 */
export function withoutChartOf(
  asked: Asked<PersonRecord>,
  person: string,
  rows: readonly PersonRow[] | null,
): PersonRecord | null {
  if (asked.value !== null || asked.is !== 'unreachable') return null;
  const identity = rows?.find(({ id }) => id === person)?.identity ?? null;
  return { id: person, book: 'care', identity, classIdentity: null, entries: [], unreadable: 0, agents: [] };
}

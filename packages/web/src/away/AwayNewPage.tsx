import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useInForce, useRecord } from '../round/useRound.js';
import { IntakeForm } from './IntakeForm.js';

/** Readings that were taken away from the clinic are brought in: typed, pasted or as a file. */
export function AwayNewPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const inForce = useInForce();
  const name = nameIn(asked.value) ?? words.sentence('people.erased');
  const title = words.sentence('away.newTitle');
  return (
    <Page
      title={title}
      under={
        <>
          <p className="identity-name">{nameIn(asked.value)}</p>
          <IdentityOf record={asked.value} />
        </>
      }
      back={{ href: `/people/${person}`, text: asked.value === null ? words.sentence('chart.title') : name }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {(record) =>
          record.identity === null ? (
            <p className="notice">{words.sentence('person.erased')}</p>
          ) : (
            <Asking asked={inForce.asked} again={inForce.again}>
              {(rules) => <IntakeForm person={person} record={record} inForce={rules} />}
            </Asking>
          )
        }
      </Asking>
    </Page>
  );
}

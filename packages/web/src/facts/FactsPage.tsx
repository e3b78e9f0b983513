import type { Agent, StandingFact, StoredEntry } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { reasonText } from '../chart/reasonText.js';
import { whoText } from '../chart/who.js';
import { Asking } from '../parts/Asking.js';
import { IdentityLine } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { localDate } from '../ports/stampAt.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { FactForm } from './FactForm.js';
import { FactRow } from './FactRow.js';
import { factsOfPerson } from './factsOn.js';
import { factText } from './factText.js';
import { useCuffRules } from './useCuffRules.js';

/** What is known of a person and bears on their signs: all of it, with its days; added, ended, taken for an error. */
export function FactsPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const identity = asked.value?.identity ?? null;
  return (
    <Page
      title={words.sentence('facts.title')}
      under={
        <>
          <p className="identity-name">{identity?.name}</p>
          <IdentityLine identity={identity} />
        </>
      }
      back={{ href: `/people/${person}`, text: words.sentence('chart.title') }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {(record) => (
          <>
            <p className="soft">{words.sentence('facts.lead')}</p>
            <FactLists person={person} entries={entriesIn(record)} agents={record.agents} />
            {record.identity === null ? null : (
              <section className="sign-form form" aria-label={words.sentence('facts.addTitle')}>
                <h2>{words.sentence('facts.addTitle')}</h2>
                <FactForm person={person} />
              </section>
            )}
            <WhoMeasures />
          </>
        )}
      </Asking>
    </Page>
  );
}

type ListsProps = {
  readonly person: string;
  readonly entries: readonly StoredEntry[];
  readonly agents: readonly Agent[];
};

function FactLists({ person, entries, agents }: ListsProps) {
  const { words, clock } = useApp();
  const rules = useCuffRules();
  const day = localDate(clock.stamp());
  const { holding, ahead, ended, inError } = factsOfPerson(entries, day);
  const saidBy = (id: string) => {
    const entry = entries.find((one) => one.id === id);
    if (entry === undefined) return '';
    return words.sentence('facts.said', {
      who: whoText(entry, agents, words),
      at: stampText({ at: entry.writtenAt }, words),
    });
  };
  const list = (title: string, facts: readonly StandingFact[]) =>
    facts.length === 0 ? null : (
      <section className="fact-list" aria-label={title}>
        <h2>{title}</h2>
        <ul>
          {facts.map((fact) => (
            <FactRow
              key={fact.newest}
              fact={fact}
              person={person}
              day={day}
              said={saidBy(fact.newest)}
              canEnd={fact.until === null || fact.until >= day}
            />
          ))}
        </ul>
      </section>
    );
  return (
    <>
      {holding.length === 0 ? <p>{words.sentence('facts.noneHold')}</p> : null}
      {list(words.sentence('facts.hold'), holding)}
      {list(words.sentence('facts.ahead'), ahead)}
      {list(words.sentence('facts.ended'), ended)}
      {inError.length === 0 ? null : (
        <section className="fact-list" aria-label={words.sentence('facts.inError')}>
          <h2>{words.sentence('facts.inError')}</h2>
          <ul>
            {inError.map(({ fact, mark }) => (
              <li key={fact.id} className="fact-row">
                <p>
                  <del>{factText(fact.content, day, rules, words)}</del>
                </p>
                <p className="soft small">{saidBy(fact.id)}</p>
                {mark.amends === null ? null : (
                  <p className="soft small">
                    {words.sentence('chart.storyError', {
                      who: whoText(mark, agents, words),
                      at: stampText({ at: mark.writtenAt }, words),
                      reason: reasonText(mark.amends, words),
                    })}
                  </p>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

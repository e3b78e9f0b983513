import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { IdentityLine } from '../parts/Identity.js';
import type { BegunAlarm } from '../round/begunAlarm.js';
import { begunText } from './begunText.js';
import { keptPeople } from './keptPeople.js';
import { useBegunAlarms } from './useBegunAlarms.js';

/** Whom this device knows where the list was not fetched: of whom a round is under way or waits. */
export function KeptPeople() {
  const { words } = useApp();
  const records = useKept(({ known }) => known.records);
  const begun = useBegunAlarms();
  const kept = keptPeople(records);
  const people = [...kept.filter(({ id }) => begun.has(id)), ...kept.filter(({ id }) => !begun.has(id))];
  if (people.length === 0) return <p>{words.sentence('people.noneKept')}</p>;
  return (
    <section className="people" aria-label={words.sentence('people.title')}>
      <p className="soft">{words.sentence('people.keptOnly')}</p>
      <ul className="people-list">
        {people.map(({ id, identity }) => (
          <li key={id}>
            <Link href={`/people/${id}`} className="person-line">
              <span className="person-who">
                <span className="person-name">{identity?.name}</span>
                {begun.has(id) ? (
                  <strong className="person-alert">{begunText(begun.get(id) as BegunAlarm, words)}</strong>
                ) : null}
                <IdentityLine identity={identity} />
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { IdentityLine } from '../parts/Identity.js';
import { keptPeople } from './keptPeople.js';

/** Whom this device knows where the list was not fetched: of whom a round is under way or waits. */
export function KeptPeople() {
  const { words } = useApp();
  const records = useKept(({ known }) => known.records);
  const people = keptPeople(records);
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
                <IdentityLine identity={identity} />
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

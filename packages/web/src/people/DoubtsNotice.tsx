import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { secondIdentifiers } from '../parts/Identity.js';
import type { Doubts } from './doubts.js';

/** What to look at before somebody is added: who may be the same, and a birth date that is hardly one. */
export function DoubtsNotice({ doubts }: { readonly doubts: Doubts }) {
  const { words } = useApp();
  const { same, isBornLongAgo } = doubts;
  return (
    <div className="notice" role="alert">
      {same.length === 0 ? null : (
        <>
          <p>{words.sentence('person.sameHere')}</p>
          <ul>
            {same.map(({ id, identity }) => (
              <li key={id}>
                <Link href={`/people/${id}`}>
                  {identity === null
                    ? null
                    : [identity.name, ...secondIdentifiers(identity, words)].join(', ')}
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
      {isBornLongAgo ? <p>{words.sentence('person.bornLongAgo')}</p> : null}
    </div>
  );
}

import type { PersonRecord } from '@evenfall/api';
import type { Identity } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';

/** Every identifier after the name, in words. */
export function secondIdentifiers({ birthDate, number }: Identity, words: Words): string[] {
  const born = birthDate === null ? [] : [words.sentence('people.born', { text: dayText(birthDate, words) })];
  return number === null ? born : [...born, words.sentence('people.number', { text: number })];
}

/** The line that says whose numbers these are. */
export function IdentityLine({ identity }: { readonly identity: Identity | null }) {
  const { words } = useApp();
  if (identity === null) return <p className="soft">{words.sentence('people.erased')}</p>;
  return (
    <p className="identity-parts">
      {secondIdentifiers(identity, words).map((part) => (
        <span key={part}>{part}</span>
      ))}
    </p>
  );
}

type Who = Pick<PersonRecord, 'identity' | 'classIdentity'>;

/** What a person is called where they are measured: their name, or in a class their pseudonym. */
export function nameIn(record: Who | null): string | undefined {
  return record?.classIdentity?.pseudonym ?? record?.identity?.name;
}

/** The line under the name: in a class there is an age at most. */
export function IdentityOf({ record }: { readonly record: Who | null }) {
  const { words } = useApp();
  // Not yet known is not erased.
  if (record === null) return null;
  if (record.classIdentity === null) return <IdentityLine identity={record.identity} />;
  const { ageYears } = record.classIdentity;
  if (ageYears === null) return null;
  return <p className="soft">{words.sentence('class.years', { years: ageYears })}</p>;
}

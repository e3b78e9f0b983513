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

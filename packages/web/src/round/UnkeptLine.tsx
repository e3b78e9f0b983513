import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { nextHref, stepOf } from './nextHref.js';
import { unkeptNumbers } from './unkept.js';
import type { Round } from './useRound.js';

/** Before the signature: which numbers were typed and not kept, with the way to each. */
export function UnkeptLine({ round, person }: { readonly round: Round; readonly person: string }) {
  const { words } = useApp();
  const unkept = unkeptNumbers(round.draft);
  if (unkept.length === 0) return null;
  const names = unkept.map((sign) => signText(sign, words));
  return (
    <div className="notice" role="status">
      <p>{words.sentence('signs.unkept', { text: names.join(', ') })}</p>
      <div className="buttons">
        {unkept.map((sign) => (
          <Link key={sign} href={nextHref(person, stepOf(sign))} className="button">
            {words.sentence('review.goOnWith', { text: signText(sign, words) })}
          </Link>
        ))}
      </div>
    </div>
  );
}

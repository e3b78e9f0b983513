import { INTERRUPTIONS, type Interruption } from '@evenfall/clinical';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { withInterruption } from './draft.js';
import type { Measuring } from './measuring.js';
import type { PanelProps } from './panelProps.js';

type VoidProps = PanelProps & { readonly measuring: Extract<Measuring, { at: 'void' }> };

/** Says that it is void, asks why if somebody wants to say, and offers it again. */
export function VoidPanel({ round, sign, measuring }: VoidProps) {
  const { words } = useApp();
  const { atSeconds, reason, way, isSaid = false } = measuring;
  // Only that the screen was left is known without being told; anything else nobody has said yet.
  const chosen = isSaid || reason === 'screen-left' ? reason : '';
  return (
    <div className="measure measure-void" role="status">
      <h2>{words.sentence('count.voidTitle')}</h2>
      <p>
        {atSeconds === null
          ? words.sentence('count.voidReload')
          : words.sentence('count.voidAfter', { seconds: atSeconds })}
      </p>
      <p>{words.sentence('count.interrupted')}</p>
      <Field label={words.sentence('count.why')}>
        {(control) => (
          <select
            {...control}
            value={chosen}
            onChange={(event) => {
              const said = event.target.value as Interruption['reason'];
              round.change((draft) => withInterruption(draft, sign, said));
            }}
          >
            {chosen === '' ? <option value="">{words.sentence('count.whyNot')}</option> : null}
            {INTERRUPTIONS.map((one) => (
              <option key={one} value={one}>
                {words.sentence(`count.${one}`)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <button
        type="button"
        className="button button-first button-thumb"
        onClick={() => round.measure(sign, { at: 'ready', way, windowSeconds: null })}
      >
        {words.sentence('count.again')}
      </button>
      <Link href={`/people/${round.draft.person}/round`} className="button button-quiet">
        {words.sentence('count.leave')}
      </Link>
    </div>
  );
}

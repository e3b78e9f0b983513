import { useApp } from '../app/context.js';

/** A value that was opened again is left as it stood. */
export function AsItWas({ onLeave }: { readonly onLeave: () => void }) {
  const { words } = useApp();
  return (
    <div className="buttons buttons-middle">
      <button type="button" className="button button-quiet" onClick={onLeave}>
        {words.sentence('review.asItWas')}
      </button>
    </div>
  );
}

import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';

type AskedFirstProps = {
  /** What it does, on the button that asks. */
  readonly does: string;
  /** What is lost by it. */
  readonly asks: string;
  /** The button that does it. */
  readonly now: string;
  readonly onSure: () => void;
};

/**
 * Does what cannot be undone, once that was said twice. The button that asked goes with the asking, and the focus with it: by
 * keyboard it goes on to what keeps everything, and back to the button.
 */
export function AskedFirst({ does, asks, now, onSure }: AskedFirstProps) {
  const { words } = useApp();
  const [isAsking, setAsking] = useState(false);
  const wasAsking = useRef(false);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isAsking !== wasAsking.current) button.current?.focus();
    wasAsking.current = isAsking;
  }, [isAsking]);
  if (!isAsking) {
    return (
      <button ref={button} type="button" className="button button-quiet" onClick={() => setAsking(true)}>
        {does}
      </button>
    );
  }
  return (
    <div className="notice" role="alert">
      <p>{asks}</p>
      <div className="buttons">
        <button type="button" className="button" onClick={onSure}>
          {now}
        </button>
        <button ref={button} type="button" className="button button-quiet" onClick={() => setAsking(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </div>
  );
}

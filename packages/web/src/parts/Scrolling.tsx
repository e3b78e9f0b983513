import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { useApp } from '../app/context.js';

/** A table that may be wider than its place: there it scrolls, says so, and the keys can move it. */
export function Scrolling({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const { words } = useApp();
  const id = useId();
  const place = useRef<HTMLDivElement>(null);
  const [isWider, setWider] = useState(false);
  useEffect(() => {
    const frame = place.current;
    if (frame === null) return;
    const watch = new ResizeObserver(() => setWider(frame.scrollWidth > frame.clientWidth));
    watch.observe(frame);
    // What is in it may grow while its place stays.
    for (const inside of frame.children) watch.observe(inside);
    return () => watch.disconnect();
  }, []);
  return (
    <>
      {isWider ? (
        <p className="small soft not-printed" id={id}>
          {words.sentence('away.figureScrolls')}
        </p>
      ) : null}
      <div
        className="trend-scroll"
        ref={place}
        {...(isWider ? { tabIndex: 0, role: 'group', 'aria-label': label, 'aria-describedby': id } : {})}
      >
        {children}
      </div>
    </>
  );
}

import { type RefObject, useEffect, useState } from 'react';

/**
 * How many things of a list are not in sight yet, from the first that the foot of the page covers on: a list that ends at the
 * foot would look whole.
 *
 * @param list whose children marked by `of` are counted
 * @param foot that lies over the end of the page
 */
export function useBelow(
  list: RefObject<HTMLElement | null>,
  foot: RefObject<HTMLElement | null>,
  of: string,
): number {
  const [below, setBelow] = useState(0);
  useEffect(() => {
    const look = () => {
      const edge = foot.current?.getBoundingClientRect().top ?? window.innerHeight;
      const all = [...(list.current?.querySelectorAll(of) ?? [])];
      setBelow(all.filter((one) => one.getBoundingClientRect().bottom > edge + 1).length);
    };
    look();
    window.addEventListener('scroll', look, { passive: true });
    const watch = new ResizeObserver(look);
    watch.observe(document.body);
    return () => {
      window.removeEventListener('scroll', look);
      watch.disconnect();
    };
  }, [list, foot, of]);
  return below;
}

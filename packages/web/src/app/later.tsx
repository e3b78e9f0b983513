import { type ComponentType, createElement, lazy, useState } from 'react';

/** Pages in a part of the app that is fetched after the first page. */
export type Later<Pages> = {
  readonly fetch: () => Promise<Pages>;
  /** Null while it was not fetched. */
  readonly here: () => Pages | null;
};

/** A part of the app by its import; fetched once. What failed is asked for again where the browser does: some keep a failure until the page is loaded again. */
export function later<Pages>(bring: () => Promise<Pages>): Later<Pages> {
  let here: Pages | null = null;
  return {
    here: () => here,
    fetch: async () => {
      here ??= await bring();
      return here;
    },
  };
}

/**
 * One page of a later part. Once its part is here it is drawn at once: a suspended page would leave the screen blank
 * for a moment, and the keys with nothing to go to.
 */
export function pageOf<Pages, Props extends object>(
  part: Later<Pages>,
  page: (pages: Pages) => ComponentType<Props>,
): ComponentType<Props> {
  const Suspended = lazy(async () => ({
    default: page(await part.fetch()),
  })) as unknown as ComponentType<Props>;
  // biome-ignore lint/correctness/noComponentHookFactories: called once for each page, when the module is read
  return function LaterPage(props: Props) {
    // Which of the two is settled when the page opens: changing it would begin the page anew.
    const [Page] = useState(() => {
      const pages = part.here();
      return pages === null ? Suspended : page(pages);
    });
    return createElement(Page, props);
  };
}

import { useEffect } from 'react';
import { useApp, useKept } from '../app/context.js';
import { loadPlaceProtocols } from '../server/loadProtocols.js';

/** The protocol versions of the place, asked for when the page is opened. */
export function usePlaceProtocols() {
  const app = useApp();
  const asked = useKept(({ known }) => known.placeProtocols);
  useEffect(() => void loadPlaceProtocols(app), [app]);
  return { asked, again: () => loadPlaceProtocols(app) };
}

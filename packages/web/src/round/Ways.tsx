import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import type { Way } from './measuring.js';

/** Counting against the watch, or tapping each one. */
export function Ways({ way, onWay }: { readonly way: Way; readonly onWay: (way: Way) => void }) {
  const { words } = useApp();
  return (
    <Choices
      legend={words.sentence('count.way')}
      isLegendUnseen
      choices={[
        { id: 'count', text: words.sentence('count.byCounting') },
        { id: 'taps', text: words.sentence('count.byTapping') },
      ]}
      chosen={way}
      onChoose={onWay}
    />
  );
}

import type { SeriesContent } from '@evenfall/record';
import { useApp } from '../app/context.js';

/** Digits of the version that a person compares. */
const VERSION_SHOWN = 12;

/** By which rule set and version a series was judged. */
export function RulesNamed({ of, computedBy }: Pick<SeriesContent, 'of' | 'computedBy'>) {
  const { words } = useApp();
  const { preset, presetVersion } = computedBy;
  return (
    <p className="small soft">
      {preset === null || presetVersion === null
        ? words.sentence('away.noRules')
        : words.sentence('away.byRules', {
            text: words.sentence('series.ruleSet', {
              title: words.title(of, preset),
              id: preset,
              version: presetVersion.slice(0, VERSION_SHOWN),
            }),
          })}
    </p>
  );
}

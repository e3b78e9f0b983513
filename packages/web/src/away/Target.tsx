import type { TargetBeside } from '@evenfall/clinical';
import { targetText } from '@evenfall/report';
import { useApp } from '../app/context.js';

/** What the guideline aims at under treatment, where the rule set has it: beside the mean, and no category. */
export function Target({ target }: { readonly target: TargetBeside | null }) {
  const { words } = useApp();
  const text = targetText(target, words);
  return text === null ? null : (
    <p className="small soft">
      {words.sentence('report.line', { label: words.sentence('series.target'), text })}
    </p>
  );
}

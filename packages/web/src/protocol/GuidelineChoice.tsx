import { SECTION_NAMES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { DescribedSelect } from '../parts/DescribedSelect.js';
import { guidelines, type ProtocolChoice, presetOf, sectionsOf, withGuideline } from './protocolForm.js';
import { presetTitle } from './protocolText.js';

type GuidelineProps = {
  readonly choice: ProtocolChoice;
  readonly onChange: (change: (was: ProtocolChoice) => ProtocolChoice) => void;
};

/** One guideline for all sections that have a set of rules of it; what it set, and what it says nothing of. */
export function GuidelineChoice({ choice, onChange }: GuidelineProps) {
  const { words } = useApp();
  const { guideline, presets } = choice;
  const set = sectionsOf(guideline);
  const text = words.title('guideline', guideline);
  const lines = (sections: readonly (typeof SECTION_NAMES)[number][]) => (
    <ul>
      {sections.map((section) => (
        <li key={section}>
          {words.sentence('protocol.presetIs', {
            section: words.sentence(`protocol.${section}`),
            text: presetTitle(section, presetOf(section, presets), words),
          })}
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <DescribedSelect
        label={words.sentence('protocol.guideline')}
        value={guideline}
        options={[
          { value: '', text: words.sentence('protocol.guidelineNone'), hint: null },
          ...guidelines().map((id) => ({
            value: id,
            text: words.title('guideline', id),
            hint: sectionsOf(id)
              .map((section) => words.sentence(`protocol.${section}`))
              .join('; '),
          })),
        ]}
        onChange={(id) => onChange((was) => withGuideline(was, id))}
      />
      {guideline === '' ? null : (
        <div className="guideline-set" role="status">
          <p>{words.sentence('protocol.guidelineSets', { text })}</p>
          {lines(set)}
          <p>{words.sentence('protocol.guidelineLacks', { text })}</p>
          {lines(SECTION_NAMES.filter((section) => !set.includes(section)))}
        </div>
      )}
    </>
  );
}

import { CONSCIOUSNESS_LEVELS, SIGN_FIGURES as F } from '@evenfall/clinical';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { SelectField, type SignFields } from './signFields.js';

/** The parts of the Glasgow scale and their best. */
const PARTS = [
  { field: 'eyes', label: 'signs.eyes', most: F.mostEyes.value },
  { field: 'verbal', label: 'signs.speech', most: F.mostVerbal.value },
  { field: 'motor', label: 'signs.movement', most: F.mostMotor.value },
] as const;

/** The level, and the Glasgow parts where they are scored. Neither is made from the other. */
export function ConsciousnessFields({ fields }: { readonly fields: SignFields }) {
  const { words } = useApp();
  const [isOpen] = useState(() => PARTS.some(({ field }) => fields.text(field) !== ''));
  const label = words.sentence('signs.level');
  return (
    <>
      <Choices
        legend={label}
        isListed
        choices={CONSCIOUSNESS_LEVELS.map((id) => ({ id, text: words.title('consciousness', id) }))}
        chosen={CONSCIOUSNESS_LEVELS.find((id) => id === fields.text('level')) ?? null}
        onChoose={(id) => fields.set('level', id)}
        wrong={fields.wrong('level', label)}
      />
      <details className="more" open={isOpen}>
        <summary>{words.sentence('signs.glasgow')}</summary>
        <div className="form">
          <p className="soft small">{words.sentence('signs.glasgowHint')}</p>
          {PARTS.map(({ field, label: key, most }) => (
            <SelectField
              key={field}
              fields={fields}
              field={field}
              label={words.sentence(key)}
              choices={[
                ...pointsFrom(most).map((points) => ({
                  id: String(points),
                  text: words.sentence('signs.points', { points, text: words.title(field, String(points)) }),
                })),
                { id: 'not-testable', text: words.sentence('signs.notTestable') },
              ]}
            />
          ))}
        </div>
      </details>
    </>
  );
}

/** The points of a part, the best first. */
function pointsFrom(most: number): number[] {
  return Array.from({ length: most }, (_, index) => most - index);
}

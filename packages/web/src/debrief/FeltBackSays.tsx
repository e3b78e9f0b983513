import type { Debrief } from '@evenfall/practice';
import { useApp } from '../app/context.js';

/** Of a pressure by feel: what the fingers had of it. What nobody felt for was not felt, and is said so. */
export function FeltBackSays({ feltBack }: Pick<Debrief, 'feltBack'>) {
  const { words } = useApp();
  if (feltBack === null) return null;
  const { hadFinger, first } = feltBack;
  return (
    <p className={first === null ? 'notice debrief-missed' : undefined}>
      {first === null
        ? words.sentence(hadFinger ? 'debrief.feltNothing' : 'debrief.feltNoFinger')
        : words.sentence('debrief.feltAt', { mmHg: first.cuffMmHg })}
    </p>
  );
}

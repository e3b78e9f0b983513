import { wasLookedUp } from '@evenfall/practice';
import type { ExerciseContent } from '@evenfall/record';
import { useApp } from '../app/context.js';

/** What helped the ear, and what the result says nothing of because of it, or that the truth was looked up. None of it is a fault. */
export function AidsSay({ exercise }: { readonly exercise: ExerciseContent }) {
  const { words } = useApp();
  const { evidence, aids } = exercise;
  const { hasHearingAid, isAmplified, isLoudspeakerVoice, hadSound } = aids;
  const texts = [
    ...(wasLookedUp(exercise) ? [words.sentence('practice.lookedUp')] : []),
    ...(evidence.wasShown ? [words.sentence('debrief.shown')] : []),
    ...(!hadSound && !evidence.wasShown ? [words.sentence('debrief.aidNoSound')] : []),
    ...(hadSound && isLoudspeakerVoice ? [words.sentence('debrief.aidLoudspeaker')] : []),
    ...(hasHearingAid || isAmplified ? [words.sentence('debrief.aidHelped')] : []),
  ];
  return texts.map((text) => (
    <p key={text} className="notice">
      {text}
    </p>
  ));
}

import type { ExerciseContent } from '@evenfall/record';
import { useApp } from '../app/context.js';

/** What helped the ear, and what the result says nothing of because of it. None of it is a fault. */
export function AidsSay({ exercise: { evidence, aids } }: { readonly exercise: ExerciseContent }) {
  const { words } = useApp();
  const { hasHearingAid, isAmplified, isLoudspeakerVoice, hadSound } = aids;
  const texts = [
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

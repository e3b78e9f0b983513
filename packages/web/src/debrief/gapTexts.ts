import type { Debrief } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** Where the sounds of this fall began, fell silent and came back, and what was felt before: beside a first sound taken after the silence. */
export function gapTexts(
  { gap, fall, sounds, reading }: Pick<Debrief, 'gap' | 'fall' | 'sounds' | 'reading'>,
  words: Words,
): string[] {
  if (gap === null || fall === null) return [];
  const middle = (gap.topMmHg + gap.bottomMmHg) / 2;
  const heard = sounds.filter(
    ({ isAudible, atSeconds }) => isAudible && atSeconds > fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  const above = heard.filter(({ cuffMmHg }) => cuffMmHg > middle);
  const [first, top] = [above[0], above.at(-1)];
  const back = heard.find(({ cuffMmHg }) => cuffMmHg < middle);
  const felt = reading?.flags.find(({ code }) => code === 'possible-gap')?.figures.palpatedMmHg;
  return [
    ...(first === undefined || top === undefined || back === undefined
      ? []
      : [
          words.sentence('debrief.gapWas', {
            firstMmHg: Math.round(first.cuffMmHg),
            topMmHg: Math.round(top.cuffMmHg),
            backMmHg: Math.round(back.cuffMmHg),
          }),
        ]),
    ...(typeof felt === 'number' ? [words.sentence('debrief.gapFelt', { mmHg: felt })] : []),
  ];
}

import type { ReportedValue } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** A value from elsewhere in figures, with its unit. A diastolic that nobody gave is a dash and never a zero. */
export function reportedText(value: ReportedValue, words: Words): string {
  switch (value.of) {
    case 'pressure':
      return words.sentence('handover.pressureIs', value);
    case 'pulse':
    case 'breaths':
      return words.sentence('handover.rateIs', value);
    case 'temperature':
      return words.sentence('handover.celsiusIs', value);
    case 'oxygen-saturation':
      return words.sentence('handover.percentIs', value);
    case 'weight':
      return words.sentence('handover.kgIs', value);
    case 'height':
      return words.sentence('handover.cmIs', value);
  }
}

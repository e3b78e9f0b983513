import { figures } from '@evenfall/clinical';

/** How large a fault has to be before it is the one thing to do differently. */
export const FAULT_FIGURES = figures({
  outOfAcceptedMmHg: {
    value: 5,
    unit: 'mmHg',
    meaning: 'a fault that moves a number by this much takes it out of what is usually accepted by itself',
    source: 'assessment handbook 8.5 (within 5 mmHg); physiology handbook 14 (accepted range)',
    sure: 'derived',
  },
  farMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning:
      'a number further than this from what is true on average is not called right, however well it was read',
    source: 'assessment handbook 8.5 (within 10 mmHg)',
    sure: 'derived',
  },
  oneThingMmHg: {
    value: 2,
    unit: 'mmHg',
    meaning: 'a fault that moves no number by this much, a mark of the gauge, is not the one thing to change',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
});

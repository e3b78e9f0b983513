import { figures } from '@evenfall/clinical';

/** What is allowed for where what was done in an exercise is held against what was asked. */
export const EXERCISE_FIGURES = figures({
  restRoomSeconds: {
    value: 2,
    unit: 's',
    meaning:
      'a rest of the arm this little too short is not called one: clocks, and the air that still leaves',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  thermometerStepC: {
    value: 0.1,
    unit: 'degC',
    meaning: 'a temperature is written as the thermometer shows it: to this',
    source: 'docs/conventions.md section 4',
    sure: 'decision',
  },
});

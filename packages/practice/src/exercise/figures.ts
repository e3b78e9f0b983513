import { type Figure, figures } from '@evenfall/clinical';

/** How often somebody comes in so, as a share of the visits. */
const comes = (value: number, meaning: string): Figure => ({
  value,
  unit: 'share',
  meaning: `how often somebody ${meaning}`,
  source: 'no source: decision of this project',
  sure: 'decision',
});

/** How somebody comes in, and what is allowed for where what was done in an exercise is held against what was asked. */
export const EXERCISE_FIGURES = figures({
  comesLegsCrossed: comes(0.5, 'comes in and sits with legs crossed'),
  comesTalking: comes(0.4, 'comes in talking'),
  comesBackUnsupported: comes(0.4, 'comes in and sits with no support for the back'),
  comesArmLow: comes(0.5, 'comes in and lets the arm hang'),
  comesFullBladder: comes(0.25, 'comes in with a full bladder'),
  comesCaffeine: comes(0.15, 'has had coffee just before'),
  comesNicotine: comes(0.08, 'has smoked just before'),
  comesCold: comes(0.08, 'comes in cold'),
  comesTightSleeve: comes(0.12, 'comes in with a tight sleeve pushed up'),
  comesOverSleeve: comes(0.12, 'is found with the cuff over a sleeve'),
  comesCuffLoose: comes(0.12, 'is found with a loose cuff'),
  comesArmBelowHeartCm: {
    value: 14,
    unit: 'cm',
    meaning: 'an arm that hangs is so far below the heart',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  comesSatMinutes: {
    value: 1,
    unit: 'min',
    meaning: 'how long somebody has sat when one comes in',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  sideRoomSeconds: {
    value: 60,
    unit: 's',
    meaning: 'going to a side room, shutting the door and sitting down there takes so long',
    source: 'from memory: a short walk and two chairs (common practice, no source)',
    sure: 'memory',
  },
  restRoomSeconds: {
    value: 2,
    unit: 's',
    meaning:
      'a rest of the arm this little too short is not called one: clocks, and the air that still leaves',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  thermometerDecimals: {
    value: 1,
    unit: 'decimals',
    meaning: 'a temperature is written as the thermometer shows it, in degC or degF: with so many',
    source: 'docs/conventions.md section 4',
    sure: 'decision',
  },
});

import { figures } from '@evenfall/clinical';

const OWN = 'no source: decision of this project';
const SYSTOLE = 'Chest 1981;80:613 (abstract): electromechanical systole of healthy people at rest';
const PITCH =
  'first sound lower than the second at the apex: Sakai 1971, Cardiovasc Res 5:358; first sound most between 20 and 60 Hz as weighted like the ear: Longhini 1982 (abstracts). The centre within that is a choice';

/** Every number of the heart's own sounds at the apex. */
export const APEX_FIGURES = figures({
  firstAfterSeconds: {
    value: 0.06,
    unit: 's',
    meaning: 'from the electrical beat to the first heart sound (0.04 to 0.07)',
    source: 'from memory',
    sure: 'memory',
  },
  systoleMan: {
    value: 0.541,
    unit: 's',
    meaning: 'from the electrical beat to the second heart sound at a rate of 0, men',
    source: SYSTOLE,
    sure: 'found',
  },
  systoleManPerRate: {
    value: -0.0022,
    unit: 's per /min',
    meaning: 'shorter by this for each beat a minute, men',
    source: SYSTOLE,
    sure: 'found',
  },
  systoleWoman: {
    value: 0.54,
    unit: 's',
    meaning: 'the same at a rate of 0, women',
    source: SYSTOLE,
    sure: 'found',
  },
  systoleWomanPerRate: {
    value: -0.002,
    unit: 's per /min',
    meaning: 'shorter by this for each beat a minute, women',
    source: SYSTOLE,
    sure: 'found',
  },
  slowestRate: {
    value: 40,
    unit: '/min',
    meaning: 'an interval as of a slower rate makes systole no longer',
    source: OWN,
    sure: 'decision',
  },
  fastestRate: {
    value: 150,
    unit: '/min',
    meaning: 'an interval as of a faster rate makes systole no shorter',
    source: OWN,
    sure: 'decision',
  },
  leastBeforeNextSeconds: {
    value: 0.06,
    unit: 's',
    meaning: 'a second sound is over at least this long before the next first one, however early that comes',
    source: OWN,
    sure: 'decision',
  },
  firstDb: {
    value: 34,
    unit: 'dB',
    meaning: 'the first heart sound at the apex',
    source: `${OWN}; louder than the second one there: from memory`,
    sure: 'decision',
  },
  secondDb: {
    value: 29,
    unit: 'dB',
    meaning: 'the second heart sound at the apex',
    source: OWN,
    sure: 'decision',
  },
  spreadDb: {
    value: 1.2,
    unit: 'dB',
    meaning: 'how much either differs from beat to beat, SD (as the sounds at the elbow do)',
    source: 'physiology handbook 8.2 of the sounds at the elbow',
    sure: 'decision',
  },
  fibrillationSpreadDb: {
    value: 2.5,
    unit: 'dB',
    meaning:
      'the first sound in atrial fibrillation, SD: it varies (from memory). Whether a short interval makes it louder or softer is told either way, so it goes with no interval here',
    source: OWN,
    sure: 'decision',
  },
  weakSecondDb: {
    value: -10,
    unit: 'dB',
    meaning:
      'the second sound of a beat that throws nothing out, beside a usual one; less of it for a stronger beat',
    source: `${OWN}; softer after a weak beat: from memory`,
    sure: 'decision',
  },
  firstHz: { value: 45, unit: 'Hz', meaning: 'centre of the first sound', source: PITCH, sure: 'decision' },
  secondHz: { value: 65, unit: 'Hz', meaning: 'centre of the second sound', source: PITCH, sure: 'decision' },
  firstMs: {
    value: 110,
    unit: 'ms',
    meaning: 'length of the first sound (100 to 160)',
    source: 'from memory',
    sure: 'memory',
  },
  secondMs: {
    value: 80,
    unit: 'ms',
    meaning: 'length of the second sound (80 to 140), shorter than the first',
    source: 'from memory',
    sure: 'memory',
  },
});

/**
 * What must be said where a number could make somebody act.
 * Source of each point, worded anew: bedside handbook 7.5; DESIGN section 2, principle 8.
 */
export const cautions = {
  aid: 'Evenfall helps trained people count, chart and teach. It does not diagnose, and it replaces neither your judgement nor your local policy nor emergency procedure.',
  localProtocol: 'Where this and your local protocol differ, follow your local protocol.',
  irregular:
    'Felt irregular: count a full minute, listen at the apex and report it. Feeling a pulse cannot tell the cause.',
  usualForAge:
    'A range is what its source, named beside it, found usual for an age; it is not what is normal for this person.',
  rangeOfCounting:
    'The range is what the counting alone allows. The same person also changes from one minute to the next.',
  missingIsNotZero: 'What was not taken stays empty. It is never a zero.',
  preliminary: 'A learner’s numbers are practice until somebody qualified has countersigned them.',
  closedCannotRing: 'A closed app cannot ring. Do not rely on it alone for a recheck.',
  specialRule: 'There is a special rule for this person. Read it before you take the reading.',
  invented: 'INVENTED: every person in this clinic is made up.',
  simulated: 'SIMULATED: no real person was measured.',
  classBook: 'CLASS: readings of learners, in nobody’s chart.',
} as const;

import type { CategoryScheme } from '@evenfall/clinical';
import {
  ADULT_SCHEMES,
  bandOf,
  OUT_OF_OFFICE_FIGURES as HOME_FIGURES,
  HOME_OFFSET,
  homeScheme,
} from '@evenfall/clinical';
import type { Levels } from '@evenfall/physiology';
import { PLAN_FIGURES } from './figures.js';
import type { PlanProtocol } from './planProtocol.js';
import { homeMean, type Subject } from './population.js';
import { visitOf } from './visit.js';

/** What one protocol came to with one subject; null where it gave no number. Errors are measured minus usual, mmHg. */
export type Outcome = {
  readonly error: Levels | null;
  /** Categories too high (over 0) or too low (under 0). */
  readonly shift: number;
  readonly minutes: number;
  readonly readings: number;
};

type Side = 'systolic' | 'diastolic';
const SIDES = ['systolic', 'diastolic'] as const;
const HIGH = (limit: number) => ({ comparison: '>=', limit }) as const;
const HOME = homeScheme(
  'high-or-not',
  HIGH(HOME_FIGURES.homeHighSystolic.value),
  HIGH(HOME_FIGURES.homeHighDiastolic.value),
) as CategoryScheme;
const HOME_MINUTES = PLAN_FIGURES.homeTeachingMinutes.value;

/** A protocol on one subject. */
export function outcomeOf(subject: Subject, protocol: PlanProtocol): Outcome {
  let minutes = 0;
  let readings = 0;
  const averages: Levels[] = [];
  for (let visit = 0; visit < protocol.visits; visit++) {
    const visited = visitOf(subject, visit, protocol);
    minutes += visited.minutes;
    readings += visited.readings;
    if (visited.average !== null) averages.push(visited.average);
  }
  const { home } = protocol;
  if (home !== null) {
    const truth = at((side) => subject.usual[side] + HOME_OFFSET[side]);
    const used = home.days - home.droppedDays;
    const found = at((side) => homeMean(subject, side, truth[side], used, home.readingsPerDay));
    return {
      error: at((side) => found[side] - truth[side]),
      shift: rankOf(HOME, found) - rankOf(HOME, truth),
      minutes: minutes + HOME_MINUTES,
      readings: readings + home.days * home.readingsPerDay,
    };
  }
  if (averages.length === 0) return { error: null, shift: 0, minutes, readings };
  const found = at((side) => averages.reduce((sum, one) => sum + one[side], 0) / averages.length);
  const scheme = ADULT_SCHEMES.find(({ id }) => id === protocol.guideline) as CategoryScheme;
  return {
    error: at((side) => found[side] - subject.usual[side]),
    shift: rankOf(scheme, found) - rankOf(scheme, subject.usual),
    minutes,
    readings,
  };
}

function at(of: (side: Side) => number): Levels {
  return { systolic: of('systolic'), diastolic: of('diastolic') };
}

function rankOf(scheme: CategoryScheme, levels: Levels): number {
  return Math.max(...SIDES.map((side) => scheme.bands.indexOf(bandOf(scheme, side, levels[side]))));
}

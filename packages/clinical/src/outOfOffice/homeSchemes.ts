import { type Band, type Bound, band, bound, type CategoryScheme, isRaised } from '../category/scheme.js';
import type { Figure } from '../contract/figure.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** How guidelines name what a mean at home comes to; `none` gives no name, `high-or-not` only that. */
export const HOME_SCHEME_IDS = [
  'none',
  'high-or-not',
  'nice-ng136',
  'acc-aha-2017',
  'esc-2024',
  'jsh-2019',
] as const;
export type HomeSchemeId = (typeof HOME_SCHEME_IDS)[number];

const from = (figure: Figure): Bound => bound(figure, '>=');

/** Names of categories at home; where a scheme has one name for two guidelines, the name says nothing of the number. */
type HomeScheme = CategoryScheme<Exclude<HomeSchemeId, 'none'>>;

const SCHEMES: readonly HomeScheme[] = [
  {
    id: 'high-or-not',
    ...originOf(F.homeHighSystolic),
    bands: [
      band('not-high', 'usual', null, null),
      band('high', 'raised', from(F.homeHighSystolic), from(F.homeHighDiastolic)),
    ],
  },
  {
    id: 'nice-ng136',
    ...originOf(F.niceHighSystolic),
    bands: [
      band('below-stage-1', 'usual', null, null),
      band('stage-1', 'raised', from(F.niceHighSystolic), from(F.niceHighDiastolic)),
      band('stage-2', 'raised', from(F.niceStage2Systolic), from(F.niceStage2Diastolic)),
    ],
  },
  {
    id: 'acc-aha-2017',
    ...originOf(F.accHighSystolic),
    bands: [
      band('normal', 'usual', null, null),
      band('elevated', 'elevated', from(F.accElevatedSystolic), null),
      band('stage-1', 'raised', from(F.accHighSystolic), from(F.accHighDiastolic)),
      band('stage-2', 'raised', from(F.accStage2Systolic), from(F.accStage2Diastolic)),
    ],
  },
  {
    id: 'esc-2024',
    ...originOf(F.escHighSystolic),
    bands: [
      band('non-elevated', 'usual', null, null),
      band('elevated', 'elevated', from(F.escElevatedSystolic), from(F.escElevatedDiastolic)),
      band('hypertension', 'raised', from(F.escHighSystolic), from(F.escHighDiastolic)),
    ],
  },
  {
    id: 'jsh-2019',
    ...originOf(F.jshHighSystolic),
    bands: [
      band('normal', 'usual', null, null),
      band('high-normal', 'elevated', from(F.jshHighNormalSystolic), null),
      band('elevated', 'elevated', from(F.jshElevatedSystolic), from(F.jshElevatedDiastolic)),
      band('grade-1', 'raised', from(F.jshHighSystolic), from(F.jshHighDiastolic)),
      band('grade-2', 'raised', from(F.jshGrade2Systolic), from(F.jshGrade2Diastolic)),
      band('grade-3', 'raised', from(F.jshGrade3Systolic), from(F.jshGrade3Diastolic)),
    ],
  },
];

/**
 * The scheme of names with the limits of high that the rules have, so that a place which sets its own limit never reads
 * a name that says otherwise. Null where the rules give no names or no limits.
 *
 * @param from how the names go by those limits; another only to make a kept value again
 */
export function homeScheme(
  id: HomeSchemeId,
  highSystolic: SidedLimit | null,
  highDiastolic: SidedLimit | null,
  from: typeof highFrom = highFrom,
): HomeScheme | null {
  const scheme = SCHEMES.find((one) => one.id === id);
  if (scheme === undefined || highSystolic === null || highDiastolic === null) return null;
  return from(scheme, highSystolic, highDiastolic);
}

/** A scheme whose names for a high mean begin at the limits of the rules, mmHg, and none of them below. */
export function highFrom<Scheme extends CategoryScheme>(
  scheme: Scheme,
  highSystolic: SidedLimit,
  highDiastolic: SidedLimit,
): Scheme {
  const firstRaised = scheme.bands.find(({ level }) => isRaised(level));
  const of = (one: Band, published: Bound | null, high: SidedLimit) =>
    one === firstRaised
      ? moved(published, high)
      : isRaised(one.level)
        ? notBelow(published, high)
        : published;
  const bands = scheme.bands.map((one) => ({
    ...one,
    systolic: of(one, one.systolic, highSystolic),
    diastolic: of(one, one.diastolic, highDiastolic),
  })) as unknown as [Band, ...Band[]];
  return { ...scheme, bands };
}

/** As `home-1` had it: only the first of the names moves, so that one after it can begin below the limit of high. */
export function firstHighFrom<Scheme extends CategoryScheme>(
  scheme: Scheme,
  highSystolic: SidedLimit,
  highDiastolic: SidedLimit,
): Scheme {
  const moves = highFrom(scheme, highSystolic, highDiastolic);
  const first = scheme.bands.findIndex(({ level }) => isRaised(level));
  const bands = scheme.bands.map((one, at) => (at === first ? moves.bands[at] : one)) as [Band, ...Band[]];
  return { ...scheme, bands };
}

function moved(published: Bound | null, limit: SidedLimit): Bound {
  const sure = published?.limit === limit.limit ? published.sure : 'decision';
  return { ...limit, sure };
}

/** The bound of a name further up, or the limit of high where that is higher; at the same number `>` is the higher. */
function notBelow(published: Bound | null, limit: SidedLimit): Bound | null {
  if (published === null || published.limit > limit.limit) return published;
  if (published.limit === limit.limit && limit.comparison === '>=') return published;
  return moved(published, limit);
}

function originOf({ source, sure }: Figure): { source: string; status: Figure['sure'] } {
  return { source, status: sure };
}

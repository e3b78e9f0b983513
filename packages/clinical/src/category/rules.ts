import type { AdultSchemeId, PregnancySchemeId } from './schemes.js';

/** The schemes of children that a place can choose. */
export const CHILD_SCHEME_IDS = ['aap-2017', 'fourth-report-2004'] as const;
export type ChildSchemeId = (typeof CHILD_SCHEME_IDS)[number];

/** What a place without a scheme has: values are charted and no category is shown. */
export const NO_SCHEME = 'none';

/** The schemes a place has chosen: the values of a protocol's `category` section. */
export type CategoryRules = {
  readonly adultScheme: AdultSchemeId | typeof NO_SCHEME;
  readonly childScheme: ChildSchemeId | typeof NO_SCHEME;
  readonly pregnancyScheme: PregnancySchemeId | typeof NO_SCHEME;
};

/** A place that has chosen no protocol shows no category. */
export const NO_CATEGORIES: CategoryRules = {
  adultScheme: NO_SCHEME,
  childScheme: NO_SCHEME,
  pregnancyScheme: NO_SCHEME,
};

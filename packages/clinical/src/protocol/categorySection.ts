import { type CategoryRules, CHILD_SCHEME_IDS, NO_SCHEME, NO_CATEGORIES as NONE } from '../category/rules.js';
import { ADULT_SCHEME_IDS, PREGNANCY_SCHEME_IDS } from '../category/schemes.js';
import { choiceField, type Origin } from './fieldShapes.js';
import type { Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** Which schemes put a pressure into a category; none until the place has chosen one. */
export const CATEGORY_SECTION: Section<CategoryRules> = {
  fields: {
    adultScheme: choiceField(
      [NO_SCHEME, ...ADULT_SCHEME_IDS],
      NONE.adultScheme,
      chosen('people of 18 years and over'),
      SINCE,
    ),
    childScheme: choiceField(
      [NO_SCHEME, ...CHILD_SCHEME_IDS],
      NONE.childScheme,
      chosen('people under 18 years'),
      SINCE,
    ),
    pregnancyScheme: choiceField(
      [NO_SCHEME, ...PREGNANCY_SCHEME_IDS],
      NONE.pregnancyScheme,
      chosen('pregnancy and the six weeks after'),
      SINCE,
    ),
  },
  agree: () => [],
};

function chosen(people: string): Origin {
  return {
    meaning: `the guideline whose categories are shown for ${people}; none shows values alone`,
    source: 'docs/conventions.md section 7: no category before a place has chosen',
    sure: 'decision',
  };
}

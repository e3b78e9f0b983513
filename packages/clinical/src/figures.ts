import { CATEGORY_COMPARISONS } from './category/comparisons.js';
import { CATEGORY_FIGURES } from './category/figures.js';
import { CDC_HEIGHTS } from './child/cdcHeightsTable.js';
import { CHILD_COMPARISONS } from './child/comparisons.js';
import { CHILD_FIGURES } from './child/figures.js';
import { FOURTH_REPORT } from './child/fourthReportTable.js';
import {
  APLS_BREATHS,
  APLS_PULSE,
  FLEMING_BREATHS,
  FLEMING_PULSE,
  PALS_2006_BREATHS,
  PALS_2006_PULSE,
  PALS_2015_BREATHS,
  PALS_2015_PULSE,
} from './child/rangesTable.js';
import { SCREENING } from './child/screeningTable.js';
import type { Figure } from './contract/figure.js';
import type { Table } from './contract/table.js';
import type { Comparison } from './contract/threshold.js';
import { COUNT_COMPARISONS } from './count/comparisons.js';
import { COUNT_FIGURES } from './count/figures.js';
import { CUFF_COMPARISONS } from './cuff/comparisons.js';
import { CUFF_FIGURES } from './cuff/figures.js';
import { DEFLATION_COMPARISONS } from './deflation/comparisons.js';
import { DEFLATION_FIGURES } from './deflation/figures.js';
import { EQUIPMENT_COMPARISONS } from './equipment/comparisons.js';
import { EQUIPMENT_FIGURES } from './equipment/figures.js';
import { OUT_OF_OFFICE_COMPARISONS } from './outOfOffice/comparisons.js';
import { OUT_OF_OFFICE_FIGURES } from './outOfOffice/figures.js';
import { ROUND_COMPARISONS } from './round/comparisons.js';
import { ROUND_FIGURES } from './round/figures.js';
import { SCORE_COMPARISONS } from './score/comparisons.js';
import { SCORE_FIGURES } from './score/figures.js';
import { SIGN_COMPARISONS } from './sign/comparisons.js';
import { SIGN_FIGURES } from './sign/figures.js';
import { TAP_COMPARISONS } from './taps/comparisons.js';
import { TAP_FIGURES } from './taps/figures.js';
import { UNIT_FIGURES } from './unit/figures.js';
import { USUAL_COMPARISONS } from './usual/comparisons.js';
import { USUAL_FIGURES } from './usual/figures.js';
import { US_ADULTS_2009_2012 } from './usual/priorsTable.js';

/** Every clinical number of this package, by folder. `docs/sources.md` is made from it. */
export const FIGURES = {
  category: CATEGORY_FIGURES,
  child: CHILD_FIGURES,
  count: COUNT_FIGURES,
  cuff: CUFF_FIGURES,
  deflation: DEFLATION_FIGURES,
  equipment: EQUIPMENT_FIGURES,
  outOfOffice: OUT_OF_OFFICE_FIGURES,
  round: ROUND_FIGURES,
  score: SCORE_FIGURES,
  sign: SIGN_FIGURES,
  taps: TAP_FIGURES,
  unit: UNIT_FIGURES,
  usual: USUAL_FIGURES,
} as const satisfies Record<string, Readonly<Record<string, Figure>>>;

/** On which side of a limit its rule applies, by folder and name; `docs/sources.md` prints it beside the number. */
export const COMPARISONS = {
  category: CATEGORY_COMPARISONS,
  child: CHILD_COMPARISONS,
  count: COUNT_COMPARISONS,
  cuff: CUFF_COMPARISONS,
  deflation: DEFLATION_COMPARISONS,
  equipment: EQUIPMENT_COMPARISONS,
  outOfOffice: OUT_OF_OFFICE_COMPARISONS,
  round: ROUND_COMPARISONS,
  score: SCORE_COMPARISONS,
  sign: SIGN_COMPARISONS,
  taps: TAP_COMPARISONS,
  unit: {},
  usual: USUAL_COMPARISONS,
} as const satisfies Record<keyof typeof FIGURES, Readonly<Record<string, Comparison>>>;

/** Published tables, by folder and name; `docs/sources.md` prints them, the longest only by its source. */
export const TABLES = {
  child: {
    APLS_BREATHS,
    APLS_PULSE,
    CDC_HEIGHTS,
    FLEMING_BREATHS,
    FLEMING_PULSE,
    FOURTH_REPORT,
    PALS_2006_BREATHS,
    PALS_2006_PULSE,
    PALS_2015_BREATHS,
    PALS_2015_PULSE,
    SCREENING,
  },
  usual: { US_ADULTS_2009_2012 },
} as const satisfies Record<string, Readonly<Record<string, Table>>>;

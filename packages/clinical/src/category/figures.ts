import { type Figure, figures, type Sureness } from '../contract/figure.js';

type Origin = { readonly source: string; readonly sure: Sureness };

const ACC_AHA: Origin = {
  source:
    'ACC/AHA 2017 (Whelton, Hypertension 2018;71:1269), unchanged in AHA/ACC 2025 (bedside handbook 6.1)',
  sure: 'second-hand',
};
const SEVERE_2017: Origin = {
  source: 'ACC/AHA 2017 (Whelton, Hypertension 2018;71:1269) (bedside handbook 3.16, 6.1)',
  sure: 'second-hand',
};
const SEVERE_2025: Origin = { source: 'AHA/ACC 2025 (bedside handbook 3.16)', sure: 'memory' };
const ESC_2024: Origin = { source: 'ESC 2024 (bedside handbook 6.1)', sure: 'second-hand' };
const ESH: Origin = { source: 'ESC/ESH 2018 and ESH 2023 (bedside handbook 6.1)', sure: 'second-hand' };
const NICE: Origin = { source: 'NICE NG136, clinic pressures (bedside handbook 6.1)', sure: 'second-hand' };
const NICE_SEVERE: Origin = { source: 'NICE NG136 (bedside handbook 3.16)', sure: 'found' };
const JSH: Origin = {
  source: 'JSH 2019, its grades from memory (bedside handbook 6.1)',
  sure: 'second-hand',
};
const JSH_GRADES: Origin = { source: 'JSH 2019, its grades (bedside handbook 6.1)', sure: 'memory' };
const ISH: Origin = { source: 'ISH 2020 (bedside handbook 6.1)', sure: 'second-hand' };
const WHO: Origin = {
  source:
    'WHO guideline for the pharmacological treatment of hypertension 2021, chapter 3 (bedside handbook 6.1)',
  sure: 'found',
};
const PREGNANCY: Origin = { source: 'bedside handbook 3.16, 6.1', sure: 'memory' };

/** Every limit of the categories of adults and of pregnancy, in mmHg, under the names of their guidelines. */
export const CATEGORY_FIGURES = figures({
  accAhaElevatedSystolic: limit(120, ACC_AHA, 'elevated'),
  accAhaStage1Systolic: limit(130, ACC_AHA, 'stage-1'),
  accAhaStage1Diastolic: limit(80, ACC_AHA, 'stage-1'),
  accAhaStage2Systolic: limit(140, ACC_AHA, 'stage-2'),
  accAhaStage2Diastolic: limit(90, ACC_AHA, 'stage-2'),
  accAha2017SevereSystolic: limit(180, SEVERE_2017, 'severe'),
  accAha2017SevereDiastolic: limit(120, SEVERE_2017, 'severe'),
  accAha2025SevereSystolic: limit(180, SEVERE_2025, 'severe'),
  accAha2025SevereDiastolic: limit(120, SEVERE_2025, 'severe'),
  escElevatedSystolic: limit(120, ESC_2024, 'elevated'),
  escElevatedDiastolic: limit(70, ESC_2024, 'elevated'),
  escHypertensionSystolic: limit(140, ESC_2024, 'hypertension'),
  escHypertensionDiastolic: limit(90, ESC_2024, 'hypertension'),
  eshNormalSystolic: limit(120, ESH, 'normal'),
  eshNormalDiastolic: limit(80, ESH, 'normal'),
  eshHighNormalSystolic: limit(130, ESH, 'high-normal'),
  eshHighNormalDiastolic: limit(85, ESH, 'high-normal'),
  eshGrade1Systolic: limit(140, ESH, 'grade-1'),
  eshGrade1Diastolic: limit(90, ESH, 'grade-1'),
  eshGrade2Systolic: limit(160, ESH, 'grade-2'),
  eshGrade2Diastolic: limit(100, ESH, 'grade-2'),
  eshGrade3Systolic: limit(180, ESH, 'grade-3'),
  eshGrade3Diastolic: limit(110, ESH, 'grade-3'),
  niceStage1Systolic: limit(140, NICE, 'stage-1'),
  niceStage1Diastolic: limit(90, NICE, 'stage-1'),
  niceStage2Systolic: limit(160, NICE, 'stage-2'),
  niceStage2Diastolic: limit(100, NICE, 'stage-2'),
  niceSevereSystolic: limit(180, NICE_SEVERE, 'severe'),
  niceSevereDiastolic: limit(120, NICE_SEVERE, 'severe'),
  niceStage1AwaySystolic: away(135, 'stage-1'),
  niceStage1AwayDiastolic: away(85, 'stage-1'),
  niceStage2AwaySystolic: away(150, 'stage-2'),
  niceStage2AwayDiastolic: away(95, 'stage-2'),
  jshHighNormalSystolic: limit(120, JSH, 'high-normal'),
  jshElevatedSystolic: limit(130, JSH, 'elevated'),
  jshElevatedDiastolic: limit(80, JSH, 'elevated'),
  jshGrade1Systolic: limit(140, JSH_GRADES, 'grade-1'),
  jshGrade1Diastolic: limit(90, JSH_GRADES, 'grade-1'),
  jshGrade2Systolic: limit(160, JSH_GRADES, 'grade-2'),
  jshGrade2Diastolic: limit(100, JSH_GRADES, 'grade-2'),
  jshGrade3Systolic: limit(180, JSH_GRADES, 'grade-3'),
  jshGrade3Diastolic: limit(110, JSH_GRADES, 'grade-3'),
  ishHighNormalSystolic: limit(130, ISH, 'high-normal'),
  ishHighNormalDiastolic: limit(85, ISH, 'high-normal'),
  ishGrade1Systolic: limit(140, ISH, 'grade-1'),
  ishGrade1Diastolic: limit(90, ISH, 'grade-1'),
  ishGrade2Systolic: limit(160, ISH, 'grade-2'),
  ishGrade2Diastolic: limit(100, ISH, 'grade-2'),
  whoHighRiskSystolic: limit(
    130,
    WHO,
    'treat-if-high-risk (heart disease, high risk, diabetes, kidney disease)',
  ),
  whoTreatSystolic: limit(140, WHO, 'treat'),
  whoTreatDiastolic: limit(90, WHO, 'treat'),
  pregnancyHypertensionSystolic: limit(140, PREGNANCY, 'hypertension in pregnancy'),
  pregnancyHypertensionDiastolic: limit(90, PREGNANCY, 'hypertension in pregnancy'),
  pregnancySevereSystolic: limit(160, PREGNANCY, 'severe, in pregnancy and the six weeks after'),
  pregnancySevereDiastolic: limit(110, PREGNANCY, 'severe, in pregnancy and the six weeks after'),
  adultFromYears: {
    value: 18,
    unit: 'years',
    meaning: 'the categories of adults are for people of this age and over',
    source: 'docs/conventions.md section 7',
    sure: 'decision',
  },
  oldestYears: {
    value: 130,
    unit: 'years',
    meaning: 'an age above this is refused: it was mistyped',
    source: 'no source: above every age on record',
    sure: 'decision',
  },
});

function limit(value: number, { source, sure }: Origin, category: string): Figure {
  return { value, unit: 'mmHg', meaning: `lower end of ${category}`, source, sure };
}

function away(value: number, category: string): Figure {
  const meaning = `${category} also needs an average at home or by day of this or more`;
  return { value, unit: 'mmHg', meaning, source: NICE.source, sure: NICE.sure };
}

import { figures } from '../contract/figure.js';

const UCUM = 'UCUM 2.1, section 4 (https://ucum.org/ucum)';

/** The numbers of the units in which a person may read and write what is kept in another. Exact, none of them measured. */
export const UNIT_FIGURES = figures({
  fahrenheitOfIce: exact(32, '[degF]', 'degrees Fahrenheit at 0 degrees Celsius'),
  fahrenheitPerNineParts: exact(9, '[degF]', 'degrees Fahrenheit in as much warmth as 5 degrees Celsius'),
  celsiusPerFiveParts: exact(5, 'Cel', 'degrees Celsius in as much warmth as 9 degrees Fahrenheit'),
  cmPerInch: exact(2.54, 'cm', 'centimetres in one international inch, [in_i]'),
  cmPerMetre: exact(100, 'cm', 'centimetres in one metre'),
  gramsPerKilogram: exact(1000, 'g', 'grams in one kilogram'),
  inchesPerFoot: exact(12, '[in_i]', 'inches in one international foot, [ft_i]'),
  settledDecimals: {
    value: 9,
    unit: 'decimals',
    meaning: 'a converted value is settled to so many',
    source: 'docs/conventions.md section 4',
    sure: 'decision',
  },
  kgPerPound: exact(0.453_592_37, 'kg', 'kilograms in one avoirdupois pound, [lb_av]'),
});

function exact(value: number, unit: string, meaning: string) {
  return { value, unit, meaning, source: UCUM, sure: 'memory' } as const;
}

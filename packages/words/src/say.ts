import { inUnit, roundTo, type Unit } from '@evenfall/clinical';
import { type Manner, USUAL_MANNER } from './manner.js';

/** The forms of a counted noun by plural category (Unicode CLDR); `other` is always needed. */
export type Forms = { readonly other: string } & Readonly<Partial<Record<Intl.LDMLPluralRule, string>>>;

/** How one locale writes numbers, counted things and lists. A sentence gets one and never formats by itself. */
export type Say = {
  readonly locale: string;
  /** How dates, times and units are wanted. */
  readonly manner: Manner;
  /** A number rounded half away from zero and written with exactly that many decimals. */
  readonly number: (value: number, decimals?: number) => string;
  /** A number with as few decimals as it needs, at most that many: 15, 7.5. */
  readonly short: (value: number, mostDecimals?: number) => string;
  /**
   * A number beside a limit: with as many decimals as it takes to stand on its own side of it (139.6, not 140) and of
   * zero (0.2, not 0), and no more than the usual ones where that is enough.
   */
  readonly beside: (value: number, limit: number, usualDecimals?: number) => string;
  /** A number with one decimal or as many more as it takes, at most that many, to stand on its own side of a limit; null if those do not do. */
  readonly onItsSide: (value: number, limit: number, mostDecimals: number) => string | null;
  /** A share beside a limit, both from 0 to 1, as a percentage without its sign; the limit is one of a decimal at most. */
  readonly percentBeside: (share: number, limit: number, usualDecimals?: number) => string;
  /** A rate a minute: whole, with a decimal only where it would read as zero and is none. */
  readonly rate: (perMinute: number) => string;
  /** Two values with as few decimals as it takes to tell them apart: 148 and 149, 147.5 and 148.4. */
  readonly apart: (a: number, b: number) => readonly [string, string];
  /** A range in whole numbers that still holds every value of it: 163.4 to 166.6 is 163 and 167. */
  readonly around: (low: number, high: number) => readonly [string, string];
  /** A limit as it was set, never rounded onto a value beside it. */
  readonly limit: (limit: number) => string;
  /** A temperature in degC with its unit, in the unit that is wanted; beside a limit, on its own side of it. */
  readonly temperature: (celsius: number, limitCelsius?: number) => string;
  /** A limit in degC with its unit, as it was set. */
  readonly temperatureLimit: (celsius: number) => string;
  /** A length in cm with its unit, in the unit that is wanted. */
  readonly length: (cm: number) => string;
  /** The number of a length in cm in the unit that is wanted, beside another one that says the unit. */
  readonly lengthNumber: (cm: number) => string;
  /** A weight in kg with its unit, in the unit that is wanted. */
  readonly mass: (kg: number) => string;
  /** A unit as the trade writes it, by its UCUM code. */
  readonly unit: (unit: string) => string;
  /** A number as it was typed, every digit of it, with the unit in which it was. */
  readonly asTyped: (typed: { readonly value: number; readonly unit: Unit }) => string;
  /** A share from 0 to 1 as whole percent: 0.081 is "8 %". */
  readonly percent: (share: number) => string;
  /** The form of a noun for a number, without the number. */
  readonly form: (value: number, forms: Forms) => string;
  /** A number and its noun: "1 beat", "2 beats". */
  readonly counted: (value: number, forms: Forms) => string;
  /** Words joined as the locale joins them: "a, b or c". */
  readonly anyOf: (items: readonly string[]) => string;
  readonly allOf: (items: readonly string[]) => string;
};

/**
 * The number, plural and list rules of a locale, by Intl.
 *
 * @param locale a BCP 47 tag, such as `en-GB`
 */
export function sayIn(locale: string, manner: Manner = USUAL_MANNER): Say {
  const plurals = new Intl.PluralRules(locale);
  const any = new Intl.ListFormat(locale, { type: 'disjunction' });
  const all = new Intl.ListFormat(locale, { type: 'conjunction' });

  const number = (value: number, decimals = 0): string => written(locale, value, decimals, decimals);
  const short = (value: number, mostDecimals = 1): string => written(locale, value, 0, mostDecimals);
  const form = (value: number, forms: Forms): string => forms[plurals.select(value)] ?? forms.other;

  return {
    locale,
    manner,
    number,
    short,
    beside: (value, limit, usual = 0) => short(value, decimalsBeside(value, limit, usual)),
    onItsSide: (value, limit, most) => {
      const decimals = decimalsBeside(value, limit, 1);
      return decimals > most ? null : short(value, decimals);
    },
    percentBeside: (share, limit, usual = 0) => {
      const value = 100 * share;
      return short(value, decimalsBeside(value, roundTo(100 * limit, 1), usual));
    },
    rate: (perMinute) => short(perMinute, decimalsBeside(perMinute, 0, 0)),
    apart: (a, b) => {
      const decimals = decimalsApart(a, b);
      return [short(a, decimals), short(b, decimals)];
    },
    around: (low, high) => [
      number(Math.floor(roundTo(low, MOST_DECIMALS))),
      number(Math.ceil(roundTo(high, MOST_DECIMALS))),
    ],
    temperature: (celsius, limitCelsius) => {
      const value = inUnit(celsius, manner.temperature);
      const limit = limitCelsius === undefined ? null : inUnit(limitCelsius, manner.temperature);
      const decimals = limit === null ? 1 : decimalsBeside(value, limit, 1);
      return `${limit === null ? number(value, 1) : short(value, decimals)} ${UNIT_TEXT[manner.temperature]}`;
    },
    temperatureLimit: (celsius) =>
      `${short(inUnit(celsius, manner.temperature), MOST_DECIMALS)} ${UNIT_TEXT[manner.temperature]}`,
    length: (cm) => `${short(inUnit(cm, manner.length), 1)} ${UNIT_TEXT[manner.length]}`,
    lengthNumber: (cm) => short(inUnit(cm, manner.length), 1),
    unit: (unit) => UNIT_TEXT[unit as keyof typeof UNIT_TEXT] ?? unit,
    asTyped: ({ value, unit }) => `${short(value, MOST_DECIMALS)} ${UNIT_TEXT[unit]}`,
    mass: (kg) => `${short(inUnit(kg, manner.mass), 2)} ${UNIT_TEXT[manner.mass]}`,
    limit: (limit) => short(limit, MOST_DECIMALS),
    percent: (share) => `${number(share * 100)} %`,
    form,
    counted: (value, forms) => `${short(value)} ${form(value, forms)}`,
    anyOf: (items) => any.format(items),
    allOf: (items) => all.format(items),
  };
}

/** How the trade writes each unit, in every language. */
const UNIT_TEXT = { Cel: '°C', '[degF]': '°F', cm: 'cm', '[in_i]': 'in', kg: 'kg', '[lb_av]': 'lb' } as const;

/** Most decimals of a value beside a limit, and of a limit: those to which a ratio is settled before it is compared. */
const MOST_DECIMALS = 9;

/** The fewest decimals, from the usual ones on, at which a value stands on its own side of a limit and of zero. */
function decimalsBeside(value: number, limit: number, usual: number): number {
  for (let decimals = usual; decimals < MOST_DECIMALS; decimals += 1) {
    const shown = roundTo(value, decimals);
    if (Math.sign(shown - limit) === Math.sign(value - limit) && Math.sign(shown) === Math.sign(value))
      return decimals;
  }
  return MOST_DECIMALS;
}

/** The fewest decimals at which two rounded values stand to each other as the values do. */
function decimalsApart(a: number, b: number): number {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals += 1) {
    if (Math.sign(roundTo(a, decimals) - roundTo(b, decimals)) === Math.sign(a - b)) return decimals;
  }
  return MOST_DECIMALS;
}

/** Rounded by the one rounding function, then only written by Intl, which must not round again. */
function written(locale: string, value: number, fewest: number, most: number): string {
  const isGrouped = Math.abs(value) >= 10_000;
  const key = `${locale}/${fewest}/${most}/${isGrouped}`;
  let format = FORMATS.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: fewest,
      maximumFractionDigits: most,
      useGrouping: isGrouped,
    });
    FORMATS.set(key, format);
  }
  return format.format(roundTo(value, most)).replace('-', MINUS);
}

/** A minus sign, not the hyphen that most locales have for it: it stands as wide as the plus and ends no line. */
const MINUS = '\u2212';

/** To make one takes a hundred times as long as to write a number with it. */
const FORMATS = new Map<string, Intl.NumberFormat>();

import type { ReportedValue } from '@evenfall/record';

/** Codes of LOINC by the sign that they are of. Source: interoperability handbook 4; all found but those marked there. */
export const SIGN_BY_LOINC: Readonly<Record<string, ReportedValue['of']>> = {
  '85354-9': 'pressure',
  '35094-2': 'pressure',
  '55417-0': 'pressure',
  '96607-7': 'pressure',
  '97844-5': 'pressure',
  '8867-4': 'pulse',
  '40443-4': 'pulse',
  '67129-7': 'pulse',
  '8889-8': 'pulse',
  '8893-0': 'pulse',
  '9279-1': 'breaths',
  '2708-6': 'oxygen-saturation',
  '59408-5': 'oxygen-saturation',
  '8310-5': 'temperature',
  '8331-1': 'temperature',
  '29463-7': 'weight',
  '8302-2': 'height',
};

/** Components of a pressure: plain, by palpation, by posture, not invasive, and means. */
export const SYSTOLIC_CODES: readonly string[] = [
  '8480-6',
  '8479-8',
  '8459-0',
  '8460-8',
  '8461-6',
  '89268-7',
  '76534-7',
  '96608-5',
  '8490-5',
];
export const DIASTOLIC_CODES: readonly string[] = [
  '8462-4',
  '8453-3',
  '8454-1',
  '8455-8',
  '76535-4',
  '96609-3',
  '8472-3',
];

/** Pressures that are a mean of several: of any averaging, and of 24 hours. */
export const MEAN_CODES: readonly string[] = ['96607-7', '97844-5'];

/** A panel names its values and has none itself. */
export const PANEL_CODE = '85353-1';

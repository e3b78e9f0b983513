import type { CodeableConcept, Coding } from 'fhir/r4.js';
import { SYSTEMS } from './systems.js';

/** A LOINC coding; LOINC codes and names are Regenstrief Institute's and are used unchanged. */
export const loinc = (code: string, display: string): Coding => ({ system: SYSTEMS.loinc, code, display });

/** Codes of LOINC, all found in the handbook's list. Source: interoperability handbook 4. */
export const LOINC = {
  panel: loinc('85353-1', 'Vital signs panel'),
  pressure: loinc('85354-9', 'Blood pressure panel with all children optional'),
  systolic: loinc('8480-6', 'Systolic blood pressure'),
  diastolic: loinc('8462-4', 'Diastolic blood pressure'),
  /** Always second, after the systolic: some lists leave it out. */
  systolicByPalpation: loinc('8479-8', 'Systolic blood pressure by palpation'),
  averagePressure: loinc('96607-7', 'Blood pressure panel mean'),
  averageSystolic: loinc('96608-5', 'Systolic blood pressure mean'),
  averageDiastolic: loinc('96609-3', 'Diastolic blood pressure mean'),
  /** The mean over 24 hours; there is no code of its own for a mean awake or asleep. Its displays are from memory. */
  dayLongPressure: loinc('97844-5', 'Blood pressure panel 24 hour mean'),
  dayLongSystolic: loinc('8490-5', 'Systolic blood pressure 24 hour mean'),
  dayLongDiastolic: loinc('8472-3', 'Diastolic blood pressure 24 hour mean'),
  pulse: loinc('8867-4', 'Heart rate'),
  breaths: loinc('9279-1', 'Respiratory rate'),
  saturation: loinc('2708-6', 'Oxygen saturation in Arterial blood'),
  saturationByOximetry: loinc('59408-5', 'Oxygen saturation in Arterial blood by Pulse oximetry'),
  temperature: loinc('8310-5', 'Body temperature'),
  weight: loinc('29463-7', 'Body weight'),
  height: loinc('8302-2', 'Body height'),
} as const;

export const concept = (...coding: Coding[]): CodeableConcept => ({ coding });

/** A category of observations; the vital-signs profiles ask for `vital-signs`. */
export const category = (code: 'vital-signs' | 'exam'): CodeableConcept =>
  concept({ system: SYSTEMS.category, code });

/** Why there is no value. Source: interoperability handbook 7. */
export type AbsentReason = 'not-performed' | 'asked-declined';
export const absent = (code: AbsentReason): CodeableConcept => concept({ system: SYSTEMS.absent, code });

/** A word with its SNOMED CT code where the handbook has read one and the place may use them. */
export function named(text: string, code: string | null): CodeableConcept {
  return code === null ? { text } : { coding: [{ system: SYSTEMS.snomed, code, display: text }], text };
}

/** SNOMED CT codes that HL7's own examples use: no others are written. Source: interoperability handbook 6. */
export const SNOMED_SITES: Readonly<Record<string, string>> = { 'upper-arm right': '368209003' };
export const SNOMED_POSTURES: Readonly<Record<string, string>> = {
  sit: '33586001',
  stand: '10904000',
  lie: '40199007',
};

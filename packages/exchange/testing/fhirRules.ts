/**
 * The rules of the HL7 FHIR R4 (4.0.1) vital-signs profiles that a JSON schema does not hold, as FHIRPath. Each was
 * read in the official StructureDefinitions, and is named by the profile and the element or invariant it stands for.
 * Source: interoperability handbook 1 to 3, 10 and 12 (found in the StructureDefinitions of HL7).
 */
export type FhirRule = {
  readonly id: string;
  /** Which resources it is for. */
  readonly on: 'Observation' | 'vital-signs' | 'bp' | 'vitalspanel' | 'Provenance' | 'Bundle';
  readonly holds: string;
};

const LOINC = "system='http://loinc.org'";

/** The value codes that the profile of each single sign takes. Source: interoperability handbook 2. */
export const SINGLE_PROFILES: Readonly<Record<string, { loinc: string; units: readonly string[] }>> = {
  heartrate: { loinc: '8867-4', units: ['/min'] },
  resprate: { loinc: '9279-1', units: ['/min'] },
  oxygensat: { loinc: '2708-6', units: ['%'] },
  bodytemp: { loinc: '8310-5', units: ['Cel', '[degF]'] },
  bodyweight: { loinc: '29463-7', units: ['kg', '[lb_av]', 'g'] },
  bodyheight: { loinc: '8302-2', units: ['cm', '[in_i]'] },
};

export const FHIR_RULES: readonly FhirRule[] = [
  {
    id: 'obs-6',
    on: 'Observation',
    holds: 'dataAbsentReason.empty() or value.empty()',
  },
  {
    id: 'vitalsigns category',
    on: 'vital-signs',
    holds:
      "category.coding.where(system='http://terminology.hl7.org/CodeSystem/observation-category' and code='vital-signs').count() = 1",
  },
  { id: 'vitalsigns subject', on: 'vital-signs', holds: 'subject.reference.exists()' },
  {
    id: 'vitalsigns effective',
    on: 'vital-signs',
    holds: '(effective is dateTime) or (effective is Period)',
  },
  {
    id: 'vs-1',
    on: 'vital-signs',
    holds: '(effective is dateTime) implies (effective.toString().length() >= 8)',
  },
  {
    id: 'vs-2',
    on: 'vital-signs',
    holds: '(component.empty() and hasMember.empty()) implies (dataAbsentReason.exists() or value.exists())',
  },
  { id: 'vs-3', on: 'vital-signs', holds: 'component.all(value.exists() or dataAbsentReason.exists())' },
  { id: 'vitalsigns code', on: 'vital-signs', holds: `code.coding.where(${LOINC}).exists()` },
  {
    id: 'vitalsigns quantity',
    on: 'vital-signs',
    holds:
      "value.ofType(Quantity).all(system='http://unitsofmeasure.org' and code.exists() and unit.exists() and value.exists())",
  },
  { id: 'bp code', on: 'bp', holds: `code.coding.where(${LOINC} and code='85354-9').count() = 1` },
  { id: 'bp value', on: 'bp', holds: 'value.empty()' },
  {
    id: 'bp SystolicBP',
    on: 'bp',
    holds: `component.where(code.coding.where(${LOINC} and code='8480-6').count() = 1).count() = 1`,
  },
  {
    id: 'bp DiastolicBP',
    on: 'bp',
    holds: `component.where(code.coding.where(${LOINC} and code='8462-4').count() = 1).count() = 1`,
  },
  {
    id: 'bp quantity',
    on: 'bp',
    holds:
      "component.value.ofType(Quantity).all(system='http://unitsofmeasure.org' and code='mm[Hg]' and unit.exists() and value.exists())",
  },
  {
    id: 'vitalspanel code',
    on: 'vitalspanel',
    holds: `code.coding.where(${LOINC} and code='85353-1').count() = 1`,
  },
  { id: 'vitalspanel members', on: 'vitalspanel', holds: 'hasMember.exists() and value.empty()' },
  {
    id: 'average derivedFrom',
    on: 'vital-signs',
    holds: "code.coding.where(code='96607-7').exists() implies derivedFrom.count() > 1",
  },
  { id: 'Provenance agent', on: 'Provenance', holds: 'agent.exists() and agent.all(who.exists())' },
  { id: 'Provenance target', on: 'Provenance', holds: 'target.exists() and recorded.exists()' },
  { id: 'bdl-1', on: 'Bundle', holds: "total.empty() or (type = 'searchset') or (type = 'history')" },
  { id: 'bdl-7', on: 'Bundle', holds: 'entry.fullUrl.isDistinct() and entry.all(fullUrl.exists())' },
  { id: 'bdl-8', on: 'Bundle', holds: "entry.all(fullUrl.contains('/_history/').not())" },
];

/** An instant of the record as FHIR writes one: with seconds always. Source: interoperability handbook 15. */
export function fhirTime(at: string): string {
  return at.replace(/T(\d{2}:\d{2})(?=Z|[+-])/, 'T$1:00');
}

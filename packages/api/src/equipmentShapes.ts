import { agent, id, identity } from '@evenfall/record';
import { z } from 'zod';
import { storedEntry } from './shapes.js';

const unreadable = z.number().int().min(0);

/** Everything ever said of the equipment, and who acts here. How it stands is projected from the entries. */
export const equipmentRecord = z.object({
  entries: z.array(storedEntry),
  unreadable,
  agents: z.array(agent),
});
export type EquipmentRecord = z.infer<typeof equipmentRecord>;

/** What was read from a gauge and stands, in order of reading, and who it is of (null once erased). */
export const gaugeReadings = z.object({
  readings: z.array(
    z.object({ entry: id, person: id, round: id, measuredAt: z.string(), written: z.string() }),
  ),
  persons: z.array(z.object({ id, identity: identity.nullable() })),
  unreadable,
});
export type GaugeReadings = z.infer<typeof gaugeReadings>;

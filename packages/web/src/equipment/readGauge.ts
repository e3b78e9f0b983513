import { GAUGE_TYPES, type GaugeType } from '@evenfall/clinical';
import type { GaugeNamed } from '@evenfall/record';

/** What a field of the form says of the kind of gauge; most are read by a needle. */
export function typeIn(text: string): GaugeType {
  return GAUGE_TYPES.find((one) => one === text) ?? 'aneroid';
}

/** What was typed; null for nothing. */
export function blank(text: string): string | null {
  const typed = text.trim();
  return typed === '' ? null : typed;
}

/** A gauge as it was typed; null without a name. */
export function readGauge(text: (field: string) => string): GaugeNamed | null {
  const name = blank(text('name'));
  if (name === null) return null;
  return {
    what: 'gauge',
    name,
    type: typeIn(text('type')),
    room: blank(text('room')),
    serial: blank(text('serial')),
    note: blank(text('note')),
  };
}

/** What stands in the form that puts a gauge right, until it is touched. */
export function gaugeFields({
  name,
  type,
  room,
  serial,
  note,
}: GaugeNamed): Readonly<Record<string, string>> {
  return { name, type, room: room ?? '', serial: serial ?? '', note: note ?? '' };
}

/** Whether what was typed says nothing else than what stands. */
export function isSameGauge(one: GaugeNamed, other: GaugeNamed): boolean {
  const [fields, others] = [gaugeFields(one), gaugeFields(other)];
  return Object.keys(fields).every((field) => fields[field] === others[field]);
}

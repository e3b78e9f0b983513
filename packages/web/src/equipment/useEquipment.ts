import type { EquipmentRecord } from '@evenfall/api';
import type { EquipmentRules } from '@evenfall/clinical';
import { type PlaceEquipment, placeEquipment } from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { entriesIn, useInForce } from '../round/useRound.js';
import { loadEquipment } from '../server/loadEquipment.js';

/** The equipment of the place as it stands today by the rules in force, asked for when a screen opens; null until it is known. */
export function useEquipment() {
  const app = useApp();
  useEffect(() => void loadEquipment(app), [app]);
  return { ...useKnownEquipment(), again: () => loadEquipment(app) };
}

/** The same as far as it is known already: asked for by nobody. */
export function useKnownEquipment() {
  const app = useApp();
  const asked = useKept(({ known }) => known.equipment);
  const record = asked.value;
  const rules = useInForce().asked.value?.equipmentRules;
  const today = localDate(app.clock.stamp());
  const equipment = useMemo(
    () => (record === null || rules === undefined ? null : standingOn(record, today, rules)),
    [record, today, rules],
  );
  return { asked, equipment, today };
}

function standingOn(record: EquipmentRecord, today: string, rules: EquipmentRules): PlaceEquipment {
  return placeEquipment(entriesIn(record), today, rules);
}

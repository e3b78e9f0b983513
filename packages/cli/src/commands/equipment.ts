import type { About } from '@evenfall/api';
import { cuffScheme, type EquipmentRules, equipmentRules, parseProtocol } from '@evenfall/clinical';
import {
  type Cuffs,
  type Gauge,
  type GaugeReading,
  placeEquipment,
  readingsInDoubt,
  type StoredEntry,
} from '@evenfall/record';
import { gaugeStandingText, type Words } from '@evenfall/words';
import { command, NO_OPERANDS } from '../command.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { RECORD_OPTIONS, type Record, recordOf, withKeeper } from '../keeper/withKeeper.js';
import { columns } from '../output/columns.js';

/** `evenfall equipment`: gauges with how they stand today by the protocol in force and how many readings are in doubt, and cuffs by room. */
export const equipment = command<Record>({
  name: 'equipment',
  summary: 'commands.equipment',
  options: RECORD_OPTIONS,
  operands: NO_OPERANDS,
  parse: (given) => ({ ok: true, value: recordOf(given) }),

  run: (record, context) =>
    withKeeper(record, context, async (controlSocket) => {
      const asked = async <T>(path: string): Promise<T> => {
        const answer = await controlRequest(controlSocket, 'GET', path);
        const text = await textOf(answer);
        if (answer.statusCode !== 200) throw new Error(`the server answered ${answer.statusCode}`);
        return JSON.parse(text) as T;
      };
      const { entries } = await asked<{ entries: StoredEntry[] }>('/api/equipment');
      const rules = await rulesInForce(asked);
      const { gauges, cuffs } = placeEquipment(entries, localDay(context.now()), rules);
      const doubted = new Map<string, number>();
      for (const { id, standing } of gauges) {
        if (standing.doubts.length === 0) continue;
        const { readings } = await asked<{ readings: GaugeReading[] }>(`/api/equipment/${id}/readings`);
        const found = new Set(
          standing.doubts.flatMap((doubt) => readingsInDoubt(readings, doubt).map(({ entry }) => entry)),
        );
        doubted.set(id, found.size);
      }
      return {
        kind: 'one',
        json: {
          gauges: gauges.map((gauge) => gaugeJson(gauge, doubted.get(gauge.id) ?? 0)),
          cuffs: cuffs.map(cuffJson),
        },
        lines: linesOf(gauges, cuffs, doubted, context.words),
      };
    }),
});

type Protocols = { readonly protocols: readonly { readonly version: string; readonly content: unknown }[] };

/** The rules of the protocol in force; without one those of the published figures. */
async function rulesInForce(asked: <T>(path: string) => Promise<T>): Promise<EquipmentRules> {
  const { protocolVersion } = await asked<About>('/api/about');
  if (protocolVersion === null) return equipmentRules(null);
  const { protocols } = await asked<Protocols>('/api/protocols');
  const found = protocols.find(({ version }) => version === protocolVersion);
  const protocol = parseProtocol(found?.content);
  if (!protocol.ok) throw new Error(`the protocol in force, ${protocolVersion}, cannot be read`);
  return equipmentRules(protocol.value);
}

/** The day that it is on this machine, `YYYY-MM-DD`. */
function localDay(now: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function gaugeJson({ id, named, endedOn, standing }: Gauge, readingsInDoubt: number) {
  const { name, type, room, serial, note } = named;
  const { state, checks } = standing;
  return { id, name, type, room, serial, note, endedOn, state, checks, readingsInDoubt };
}

function cuffJson({ id, named, endedOn }: Cuffs) {
  const { room, scheme, cuff, pieces, note } = named;
  return { id, room, scheme, cuff, pieces, bladderCm: bladderOf(named), note, endedOn };
}

/** The bladder as measured, else as the scheme has it; null where this program's scheme has no such cuff. */
function bladderOf({ scheme, cuff, bladderCm }: Cuffs['named']) {
  return bladderCm ?? cuffScheme(scheme).cuffs.find(({ id }) => id === cuff)?.bladderCm ?? null;
}

function linesOf(
  gauges: readonly Gauge[],
  cuffs: readonly Cuffs[],
  doubted: ReadonlyMap<string, number>,
  words: Words,
): string[] {
  const gaugeRows = gauges.map((gauge) => {
    const readings = doubted.get(gauge.id) ?? 0;
    const standing = gaugeStandingText(gauge, words, (day) => day);
    const doubt = readings === 0 ? '' : `; ${words.sentence('equipment.inDoubt', { readings })}`;
    return [gauge.named.name, gauge.named.room ?? '', standing + doubt];
  });
  const cuffRows = cuffs
    .filter(({ endedOn }) => endedOn === null)
    .map(({ named }) => {
      const bladder = bladderOf(named);
      const text = words.title('cuff', named.cuff);
      return [
        named.room ?? words.sentence('equipment.noRoom'),
        words.sentence('equipment.cuffIs', { pieces: named.pieces, text }),
        bladder === null ? '' : words.sentence('equipment.bladder', bladder),
      ];
    });
  return [
    ...(gaugeRows.length === 0 ? [words.sentence('equipment.noGauges')] : columns(gaugeRows)),
    ...(cuffRows.length === 0 ? [words.sentence('equipment.noCuffs')] : columns(cuffRows)),
  ];
}

import { type Refusal, refusal } from '@evenfall/clinical';
import { type Agent, agent, type Identity, identity, unkeepableTexts } from '@evenfall/record';
import { OUR_EXTENSIONS } from '../systems.js';
import { asObject, type Json, listIn, textIn } from './json.js';

/** An entry that a bundle of ours carries, unread, with when it was recorded and where it stands in the bundle. */
export type OwnEntry = {
  readonly at: string;
  readonly frame: Json;
  readonly recordedAt: string | null;
};

/** The JSON text of an extension of ours; undefined where the resource has none, null where it is no JSON, or text that cannot be kept. */
function extensionOf(resource: Json, url: string): unknown {
  const at = listIn(resource, 'extension').findIndex((one) => asObject(one).url === url);
  if (at < 0) return undefined;
  const text = textIn(asObject(listIn(resource, 'extension')[at]), 'valueString') ?? '';
  try {
    const value: unknown = JSON.parse(text);
    return unkeepableTexts(value).length > 0 ? null : value;
  } catch {
    return null;
  }
}

/** The entry within a Provenance of ours; null for another Provenance. */
export function ownEntry(resource: Json, at: string): OwnEntry | Refusal | null {
  const read = extensionOf(resource, OUR_EXTENSIONS.entry);
  if (read === undefined) return null;
  if (read === null || typeof read !== 'object')
    return refusal(`${at}/extension`, 'missing', 'json-text', null);
  const { recordedAt, ...frame } = read as Json;
  return { at, frame, recordedAt: typeof recordedAt === 'string' ? recordedAt : null };
}

/** Who a person is, as a Patient of ours has it; null for one without. */
export function ownIdentity(resource: Json): Identity | null {
  const read = identity.safeParse(extensionOf(resource, OUR_EXTENSIONS.identity));
  return read.success ? read.data : null;
}

/** A protocol version's content in a Basic of ours; undefined for another Basic. */
export function ownProtocol(resource: Json): unknown {
  return extensionOf(resource, OUR_EXTENSIONS.protocol);
}

/** Somebody who acts, as a Practitioner of ours has them; null where the name is not known. */
export function ownAgent(resource: Json): Agent | null {
  const name = textIn(asObject(listIn(resource, 'name')[0]), 'text');
  const read = agent.safeParse({ id: textIn(resource, 'id'), name });
  return read.success ? read.data : null;
}

/** Whether a resource carries something of the record, without looking into it. */
export function isOwn(resource: Json): boolean {
  const ours: readonly unknown[] = Object.values(OUR_EXTENSIONS);
  return listIn(resource, 'extension').some((one) => ours.includes(asObject(one).url));
}

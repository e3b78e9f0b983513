import { overrideFields, type Protocol, presetProtocol, protocolDocument } from '@evenfall/clinical';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { addProtocol } from '../store/protocols.js';
import { must } from './contents.js';

/** What the invented clinic has chosen, section by section; every other section stands at its first preset. */
const CHOSEN = {
  category: 'acc-aha-2017',
  readings: 'acc-aha-2017',
  actNow: 'acc-aha-2017',
  score: 'adult-early-warning',
  home: 'acc-aha-2017',
  ambulatory: 'acc-aha-2017',
} as const;

/** What it decided for itself. */
const DECIDED = { section: 'category', key: 'childScheme', value: 'fourth-report-2004' };

/** The protocol of the invented clinic, kept; and the version it is kept under. */
export async function keepDemoProtocol(
  db: Kysely<Tables>,
  site: string,
): Promise<{ protocol: Protocol; version: string }> {
  const published = must(presetProtocol(CHOSEN));
  const protocol = must(overrideFields(published, [DECIDED]));
  const kept = await addProtocol(db, site, protocolDocument(protocol));
  if (!kept.ok) throw new Error(`the demo is wrong: ${JSON.stringify(kept.refusals)}`);
  return { protocol, version: kept.row.version };
}

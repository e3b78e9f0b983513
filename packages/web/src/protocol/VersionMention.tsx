import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { versionHref, versionText } from './protocolText.js';

/** The protocol version that something was made under, leading to what it said. */
export function VersionMention({ version }: { readonly version: string }) {
  const { words } = useApp();
  const place = useKept(({ known }) => known.placeProtocols.value);
  // Absolute: a class has its pages under an address of its own.
  return <Link href={`~${versionHref(version)}`}>{versionText(version, place, words)}</Link>;
}

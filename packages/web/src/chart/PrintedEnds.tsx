import type { Identity } from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { stampText } from '../app/times.js';
import { secondIdentifiers } from '../parts/Identity.js';
import { useMeasuring } from '../signIn/useAccess.js';

type HeadProps = { readonly name: string; readonly identity: Identity | null };

/** Whose chart it is and of which place: at the head of every printed page, so that no page is ever anybody else's. */
export function PrintedHead({ name, identity }: HeadProps) {
  const { words } = useApp();
  const site = useKept(({ known }) => known.about.value?.site.name ?? null);
  return (
    <p className="print-whose">
      <strong>{name}</strong>
      {(identity === null ? [] : secondIdentifiers(identity, words)).map((part) => (
        <span key={part}>{part}</span>
      ))}
      <span className="print-what">
        <b>{words.sentence('chart.title')}</b> {site ?? words.sentence('app.name')}
      </span>
    </p>
  );
}

/** When, by whom and by which program it was printed; that it is invented, where it is. */
export function PrintedFoot() {
  const { words, clock, program } = useApp();
  const isInvented = useKept(({ known }) => known.about.value?.site.invented ?? false);
  const agent = useMeasuring();
  const who = useKept(({ known }) => known.agents.value?.find(({ id }) => id === agent)?.name ?? null);
  return (
    <p className="print-line">
      {words.sentence('chart.printedFoot', { program, at: stampText(clock.stamp(), words), who })}
      {isInvented ? <strong> · {words.sentence('app.inventedBand')}</strong> : null}
    </p>
  );
}

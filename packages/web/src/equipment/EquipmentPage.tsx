import { cuffScheme, type EquipmentRules, equipmentFields } from '@evenfall/clinical';
import type { Cuffs, Gauge } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { originText } from '../protocol/protocolText.js';
import { useInForce } from '../round/useRound.js';
import { AddCuff } from './AddCuff.js';
import { AddGauge } from './AddGauge.js';
import { EndThing } from './EndThing.js';
import { standingText } from './standingText.js';
import { useEquipment } from './useEquipment.js';

/** What the place measures with: gauges with how they stand, and cuffs by room. */
export function EquipmentPage() {
  const { words } = useApp();
  const { asked, again, equipment } = useEquipment();
  return (
    <Page
      title={words.sentence('equipment.title')}
      back={{ href: '/', text: words.sentence('people.title') }}
    >
      <p className="soft">{words.sentence('equipment.lead')}</p>
      <div className="not-printed">
        <WhoMeasures />
      </div>
      <Asking asked={asked} again={again}>
        {() =>
          equipment === null ? null : (
            <>
              <section className="equipment" aria-labelledby="gauges">
                <h2 id="gauges">{words.sentence('equipment.gauges')}</h2>
                <GaugeList gauges={equipment.gauges} />
                <details className="more not-printed">
                  <summary>{words.sentence('equipment.addGauge')}</summary>
                  <AddGauge />
                </details>
              </section>
              <section className="equipment" aria-labelledby="cuffs">
                <h2 id="cuffs">{words.sentence('equipment.cuffs')}</h2>
                <CuffRooms cuffs={equipment.cuffs} />
                <details className="more not-printed">
                  <summary>{words.sentence('equipment.addCuff')}</summary>
                  <AddCuff />
                </details>
              </section>
              <Limits />
            </>
          )
        }
      </Asking>
    </Page>
  );
}

function GaugeList({ gauges }: { readonly gauges: readonly Gauge[] }) {
  const { words } = useApp();
  if (gauges.length === 0) return <p>{words.sentence('equipment.noGauges')}</p>;
  const here = gauges.filter(({ endedOn }) => endedOn === null);
  const gone = gauges.filter(({ endedOn }) => endedOn !== null);
  return (
    <ul className="gauge-list">
      {[...here, ...gone].map((gauge) => (
        <li key={gauge.id}>
          <Link href={`/equipment/gauges/${gauge.id}`} className="gauge-line">
            <span className="gauge-name">{gauge.named.name}</span>
            <span className="soft small">
              {[words.title('gaugeType', gauge.named.type), gauge.named.room].filter(Boolean).join(' · ')}
            </span>
            <GaugeMark gauge={gauge} />
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** How a gauge stands: what failed in the strongest mark, what is due in the next. */
export function GaugeMark({ gauge }: { readonly gauge: Gauge }) {
  const { words } = useApp();
  const { state } = gauge.standing;
  const isHere = gauge.endedOn === null;
  const mark = !isHere || state === 'good' ? 'soft' : state === 'failed' ? 'person-alert' : 'person-mark';
  return <span className={`small ${mark}`}>{standingText(gauge, words)}</span>;
}

function CuffRooms({ cuffs }: { readonly cuffs: readonly Cuffs[] }) {
  const { words } = useApp();
  const here = cuffs.filter(({ endedOn }) => endedOn === null);
  if (here.length === 0) return <p>{words.sentence('equipment.noCuffs')}</p>;
  const rooms = [...new Set(here.map(({ named }) => named.room))];
  return (
    <>
      {rooms.map((room) => (
        <div key={room ?? ''} className="cuff-room">
          <h3>{room ?? words.sentence('equipment.noRoom')}</h3>
          <ul>
            {here
              .filter(({ named }) => named.room === room)
              .map((one) => (
                <CuffRow key={one.id} cuffs={one} />
              ))}
          </ul>
        </div>
      ))}
    </>
  );
}

function CuffRow({ cuffs }: { readonly cuffs: Cuffs }) {
  const { words } = useApp();
  const { scheme, cuff, bladderCm, pieces } = cuffs.named;
  const { cuffs: all, smallestArmCm } = cuffScheme(scheme);
  const at = all.findIndex(({ id }) => id === cuff);
  const size = all[at];
  if (size === undefined) return null;
  const before = all[at - 1]?.largestArmCm;
  const largest = size.largestArmCm;
  const name = words.title('cuff', cuff);
  const arms =
    before !== undefined
      ? words.sentence('equipment.armsAbove', { smallest: before, largest })
      : smallestArmCm !== null
        ? words.sentence('equipment.armsBetween', { smallest: smallestArmCm, largest })
        : words.sentence('equipment.arms', { largest });
  const bladder = words.sentence('equipment.bladder', bladderCm ?? size.bladderCm);
  return (
    <li className="cuff-row">
      <p>
        <strong>{words.sentence('equipment.cuffIs', { pieces, text: name })}</strong>
      </p>
      <p className="small soft">
        {arms} · {bladder}
        {bladderCm === null ? null : ` ${words.sentence('equipment.bladderMeasured')}`} ·{' '}
        {words.title('preset', scheme)}
      </p>
      <EndThing equipment={cuffs.id} name={name} />
    </li>
  );
}

/** The rules that stand behind a verdict and a date, in the order of the work. */
const SHOWN = [
  'mostRestMmHg',
  'mostErrorMmHg',
  'fewestPoints',
  'mostLeakMmHgPerMinute',
  'zeroDays',
  'comparisonMonths',
  'mercuryComparisonMonths',
  'leakMonths',
] as const satisfies readonly (keyof EquipmentRules)[];

function Limits() {
  const { words } = useApp();
  const inForce = useInForce().asked.value;
  if (inForce === null) return null;
  const fields = equipmentFields(inForce.equipmentSection);
  return (
    <details className="more not-printed">
      <summary>{words.sentence('equipment.limits')}</summary>
      <p>{words.sentence('equipment.limitsLead')}</p>
      <ul className="limits small">
        {SHOWN.map((id) => (
          <li key={id}>
            {words.sentence('equipment.limitIs', {
              text: words.sentence(`equipment.${id}`, { limit: fields[id].value }),
              source: originText(`equipment/${id}`, fields[id], words),
            })}
          </li>
        ))}
      </ul>
      <p>
        <Link href="/protocol">{words.sentence('protocol.link')}</Link>
      </p>
      <p>{words.sentence('equipment.confirm')}</p>
    </details>
  );
}

import type { GaugeReadings } from '@evenfall/api';
import type { GaugeDoubt } from '@evenfall/clinical';
import { type Gauge, readingsInDoubt } from '@evenfall/record';
import { useCallback, useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { dayText, stampText } from '../app/times.js';
import { Asking } from '../parts/Asking.js';
import { afterAsking } from '../server/load.js';
import { ASKED, type Asked } from '../store/known.js';

/** Of every time that a gauge failed: the readings since the check was last good, by person, and what follows. */
export function GaugeDoubts({ gauge }: { readonly gauge: Gauge }) {
  const { doubts } = gauge.standing;
  const [asked, again] = useReadings(gauge.id, doubts.length > 0);
  const { words } = useApp();
  if (doubts.length === 0) return null;
  return (
    <section className="doubts" aria-labelledby="doubts">
      <h2 id="doubts">{words.sentence('equipment.doubts')}</h2>
      <Asking asked={asked} again={again}>
        {(listed) =>
          doubts
            .toReversed()
            .map((doubt) => (
              <Doubt key={`${doubt.of} ${doubt.failedMs}`} doubt={doubt} gauge={gauge} listed={listed} />
            ))
        }
      </Asking>
    </section>
  );
}

type DoubtProps = {
  readonly doubt: GaugeDoubt;
  readonly gauge: Gauge;
  readonly listed: GaugeReadings;
};

function Doubt({ doubt, gauge, listed }: DoubtProps) {
  const { words } = useApp();
  const readings = readingsInDoubt(listed.readings, doubt);
  const persons = [...new Set(readings.map(({ person }) => person))];
  const at = (ms: number | null) =>
    gauge.log.find(({ entry }) => Date.parse(entry.measuredAt.at) === ms)?.entry.measuredAt.at;
  const day = (ms: number | null) => {
    const found = at(ms);
    return found === undefined ? '' : dayText(found.slice(0, DAY_CHARACTERS), words);
  };
  const check = words.title('gaugeCheck', doubt.of);
  return (
    <div className="doubt notice">
      <p>
        <strong>{words.sentence('equipment.doubtOpen', { check, failed: day(doubt.failedMs) })}</strong>{' '}
        {doubt.afterMs === null
          ? words.sentence('equipment.doubtNever')
          : words.sentence('equipment.doubtSince', { text: day(doubt.afterMs) })}{' '}
        {doubt.untilMs === null ? null : words.sentence('equipment.doubtUntil', { text: day(doubt.untilMs) })}
      </p>
      {readings.length === 0 ? (
        <p>{words.sentence('equipment.doubtNone')}</p>
      ) : (
        <>
          <p>
            {words.sentence('equipment.doubtCount', { readings: readings.length, people: persons.length })}
          </p>
          <ul className="doubt-people">
            {persons.map((person) => {
              const own = readings.filter((one) => one.person === person);
              const name =
                listed.persons.find(({ id }) => id === person)?.identity?.name ??
                words.sentence('people.erased');
              return (
                <li key={person}>
                  <p>{words.sentence('equipment.persons', { who: name, readings: own.length })}</p>
                  <ul>
                    {own.map(({ entry, round, written, measuredAt }) => (
                      <li key={entry}>
                        <Link href={`/people/${person}#round-${round}`}>
                          {words.sentence('equipment.readingAt', {
                            written,
                            at: stampText({ at: measuredAt }, words),
                          })}
                          <span className="unseen">, {name}</span>
                        </Link>
                      </li>
                    ))}
                  </ul>
                </li>
              );
            })}
          </ul>
        </>
      )}
      {doubt.untilMs === null ? <p>{words.sentence('equipment.doubtFollowsGauge')}</p> : null}
      {readings.length === 0 ? null : <p>{words.sentence('equipment.doubtFollowsReadings')}</p>}
      <p className="small">{words.sentence('equipment.doubtUnnamed')}</p>
    </div>
  );
}

const DAY_CHARACTERS = 10;

/** What was read from a gauge, asked for where it is needed. */
function useReadings(gauge: string, isNeeded: boolean) {
  const { server } = useApp();
  const [asked, setAsked] = useState<Asked<GaugeReadings>>(ASKED);
  const again = useCallback(async () => {
    const answer = await server.call('listGaugeReadings', { params: { gauge } });
    setAsked((was) => afterAsking(was, answer, answer.ok ? answer.value.unreadable : 0));
  }, [server, gauge]);
  useEffect(() => void (isNeeded && again()), [isNeeded, again]);
  return [asked, again] as const;
}

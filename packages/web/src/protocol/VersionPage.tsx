import { type Protocol, type Field as RuleField, SECTION_NAMES } from '@evenfall/clinical';
import { placeVersions } from '@evenfall/record';
import { useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import type { PlaceProtocols } from '../store/known.js';
import { AskFirst } from './AskFirst.js';
import { chooseVersion } from './chooseVersion.js';
import { BetweenTwo, FromPublished } from './Differences.js';
import {
  choiceText,
  fieldName,
  originText,
  presetTitle,
  readVersion,
  shapeOf,
  shortHash,
  valueText,
  versionText,
} from './protocolText.js';
import { usePlaceProtocols } from './usePlaceProtocols.js';

/** One version of the protocol of the place, to be read as it was, and to be put in force again. */
export function VersionPage({ version }: { readonly version: string }) {
  const { words } = useApp();
  const { asked, again } = usePlaceProtocols();
  const { protocols = [], choices = [] } = asked.value ?? {};
  const found = placeVersions(
    protocols.map((one) => one.version),
    choices,
  ).find((one) => one.version === version);
  const title =
    found?.number == null
      ? words.sentence('protocol.versionUnnumbered', { hash: shortHash(version) })
      : words.sentence('protocol.versionTitle', { number: found.number });
  return (
    <Page title={title} back={{ href: '/protocol', text: words.sentence('protocol.title') }}>
      <Asking asked={asked} again={again}>
        {(place) =>
          place.protocols.some((one) => one.version === version) ? (
            <Version version={version} place={place} />
          ) : (
            <p className="notice">{words.sentence('protocol.noSuchVersion')}</p>
          )
        }
      </Asking>
    </Page>
  );
}

type VersionProps = { readonly version: string; readonly place: PlaceProtocols };

function Version({ version, place }: VersionProps) {
  const { words } = useApp();
  const inForce = useKept(({ known }) => known.about.value?.protocolVersion ?? null);
  const protocol = readVersion(version, place);
  const now = inForce === null ? null : readVersion(inForce, place);
  const isInForce = inForce === version;
  return (
    <div className="form protocol">
      <p className="notice">
        {words.sentence('protocol.thisIs', { text: versionText(version, place, words) })}{' '}
        {words.sentence(isInForce ? 'protocol.isInForce' : 'protocol.notInForce')}
      </p>
      <ul className="story">
        {place.choices
          .filter((choice) => choice.version === version)
          .map((choice) => (
            <li key={choice.entry}>{choiceText(choice, place, words)}</li>
          ))}
      </ul>
      {protocol === null ? <p>{words.sentence('protocol.unreadable')}</p> : null}
      {protocol === null ? null : (
        <section className="protocol-section" aria-labelledby="version-differs">
          <h2 id="version-differs">{words.sentence('protocol.differs')}</h2>
          <FromPublished protocol={protocol} />
        </section>
      )}
      {protocol === null || isInForce ? null : (
        <section className="protocol-section" aria-labelledby="version-against">
          <h2 id="version-against">{words.sentence('protocol.against')}</h2>
          {now === null ? (
            <p>{words.sentence('protocol.changesFromNone')}</p>
          ) : (
            <BetweenTwo
              before={now}
              after={protocol}
              afterIs={words.sentence('protocol.versionValue')}
              same={words.sentence('protocol.againstSame')}
            />
          )}
        </section>
      )}
      {protocol === null ? null : <AllRules protocol={protocol} />}
      {protocol === null ? null : <Again version={version} place={place} isInForce={isInForce} />}
    </div>
  );
}

function AllRules({ protocol }: { readonly protocol: Protocol }) {
  const { words } = useApp();
  return (
    <section className="protocol-section" aria-labelledby="version-rules">
      <h2 id="version-rules">{words.sentence('protocol.rules')}</h2>
      {SECTION_NAMES.filter((section) => protocol.sections[section] !== undefined).map((section) => {
        const fields = Object.entries(protocol.sections[section] as Readonly<Record<string, RuleField>>);
        const preset = protocol.presets[section];
        return (
          <details key={section} className="more">
            <summary>
              {words.sentence('protocol.presetIs', {
                section: words.sentence(`protocol.${section}`),
                text: preset === undefined ? '' : presetTitle(section, preset, words),
              })}
            </summary>
            <dl className="facts">
              {fields.map(([key, field]) => {
                const shape = shapeOf(section, key);
                const place = `${section}/${key}`;
                return (
                  <div key={key}>
                    <dt>{shape === undefined ? key : fieldName(`${section}/${key}`, shape.unit, words)}</dt>
                    <dd>
                      <strong>{valueText(place, field.value, field.unit, words)}</strong>{' '}
                      {originText(place, field, words)}
                    </dd>
                  </div>
                );
              })}
            </dl>
          </details>
        );
      })}
    </section>
  );
}

function Again({ version, place, isInForce }: VersionProps & { readonly isInForce: boolean }) {
  const app = useApp();
  const { words } = app;
  const [said, setSaid] = useState<string | null>(null);
  const wasUsed = place.choices.some((choice) => choice.version === version);
  return (
    <div className="form">
      {said === null ? null : (
        <p className="notice" role="status">
          {said}
        </p>
      )}
      {isInForce ? null : (
        <>
          <WhoMeasures />
          <AskFirst
            button={words.sentence(wasUsed ? 'protocol.again' : 'protocol.againFirst')}
            isFirst
            title={words.sentence('protocol.againTitle')}
            yes={words.sentence('protocol.againNow')}
            no={words.sentence('app.cancel')}
            onYes={async () => {
              const why = await chooseVersion(app, version);
              if (why === null) setSaid(words.sentence('protocol.chosen'));
              return why;
            }}
          >
            <p>{versionText(version, place, words)}</p>
            <p>{words.sentence('protocol.againWhat')}</p>
          </AskFirst>
        </>
      )}
    </div>
  );
}

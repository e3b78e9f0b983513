import { listPresets, localFields, type Protocol, SECTION_NAMES } from '@evenfall/clinical';
import { placeVersions } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import type { PlaceProtocols } from '../store/known.js';
import { choiceText, presetTitle, readVersion, shortHash, versionHref, whoChose } from './protocolText.js';

type ListProps = { readonly place: PlaceProtocols; readonly inForce: string | null };

/** Every protocol that the place ever had, the newest first, each to be read; and who chose what. */
export function VersionList({ place, inForce }: ListProps) {
  const { words } = useApp();
  const versions = placeVersions(
    place.protocols.map(({ version }) => version),
    place.choices,
  );
  if (versions.length === 0) return <p>{words.sentence('protocol.versionsNone')}</p>;
  return (
    <>
      <p>{words.sentence('protocol.versionsLead')}</p>
      <ul className="versions">
        {versions.map(({ version, number, choices }) => (
          <li key={version}>
            <p>
              <Link href={versionHref(version)}>
                {number === null
                  ? words.sentence('protocol.versionUnnumbered', { hash: shortHash(version) })
                  : words.sentence('protocol.versionShort', { number })}
              </Link>
              {version === inForce ? <strong> {words.sentence('protocol.versionNow')}</strong> : null}
            </p>
            {choices.map((choice) => (
              <p key={choice.entry} className="small">
                {words.sentence('protocol.versionFrom', {
                  at: stampText({ at: choice.at }, words),
                  who: whoChose(choice, place, words),
                })}
              </p>
            ))}
            <VersionLine protocol={readVersion(version, place)} words={words} />
            <p className="small soft">
              {words.sentence('protocol.versionHash', { hash: shortHash(version) })}
            </p>
          </li>
        ))}
      </ul>
      <details className="more">
        <summary>{words.sentence('protocol.history')}</summary>
        <ol className="story">
          {[...place.choices].reverse().map((choice) => (
            <li key={choice.entry}>{choiceText(choice, place, words)}</li>
          ))}
        </ol>
      </details>
    </>
  );
}

/** In a line: the sets of rules that are not the first of their section, and how many values are the place's own. */
function VersionLine({ protocol, words }: { readonly protocol: Protocol | null; readonly words: Words }) {
  if (protocol === null) return <p className="small">{words.sentence('protocol.unreadable')}</p>;
  const presets = SECTION_NAMES.flatMap((section) => {
    const preset = protocol.presets[section];
    const first = listPresets().find((one) => one.section === section)?.id;
    if (preset === undefined || preset === first) return [];
    const text = presetTitle(section, preset, words);
    return [words.sentence('protocol.presetIs', { section: words.sentence(`protocol.${section}`), text })];
  });
  const count = localFields(protocol).length;
  return (
    <p className="small">{[...presets, words.sentence('protocol.differsCount', { count })].join(' · ')}</p>
  );
}

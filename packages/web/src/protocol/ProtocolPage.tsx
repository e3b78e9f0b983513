import {
  type Protocol,
  presetProtocol,
  type Refusal,
  SECTION_NAMES,
  type SectionName,
} from '@evenfall/clinical';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import type { PlaceProtocols } from '../store/known.js';
import { BetweenTwo, FromPublished } from './Differences.js';
import { GuidelineChoice } from './GuidelineChoice.js';
import { PutInForce } from './PutInForce.js';
import {
  choiceOf,
  fieldRefused,
  NOTHING_CHOSEN_YET,
  type ProtocolChoice,
  protocolOf,
} from './protocolForm.js';
import { readVersion, versionHref, versionText } from './protocolText.js';
import { fieldId, SectionFields } from './SectionFields.js';
import { usePlaceProtocols } from './usePlaceProtocols.js';
import { VersionList } from './VersionList.js';

/** The rules of the place, from published ones, each with its source; what is put in force counts from now on. */
export function ProtocolPage() {
  const { words } = useApp();
  const { asked, again } = usePlaceProtocols();
  const about = useKept(({ known }) => known.about.value);
  return (
    <Page title={words.sentence('protocol.title')} back={{ href: '/', text: words.sentence('people.title') }}>
      <Asking asked={asked} again={again}>
        {(place) => (about === null ? null : <Rules place={place} inForce={about.protocolVersion} />)}
      </Asking>
    </Page>
  );
}

type RulesProps = { readonly place: PlaceProtocols; readonly inForce: string | null };

function Rules({ place, inForce }: RulesProps) {
  const { words } = useApp();
  const now = inForce === null ? null : readVersion(inForce, place);
  // Where none is in force, the last that was is where to start from: what the place set is not lost.
  const last = place.choices.findLast(({ version }) => version !== null)?.version ?? null;
  const start = inForce ?? last;
  return (
    <div className="form protocol">
      {inForce === null ? (
        <div className="notice">
          <p>{words.sentence('protocol.none')}</p>
          {last === null ? null : (
            <p>
              <Link href={versionHref(last)}>
                {words.sentence('protocol.noneStart', { text: versionText(last, place, words) })}
              </Link>
            </p>
          )}
        </div>
      ) : (
        <p className="notice">
          <Link href={versionHref(inForce)}>
            {words.sentence('protocol.inForce', { text: versionText(inForce, place, words) })}
          </Link>
        </p>
      )}
      <p>{words.sentence('protocol.lead')}</p>
      <Changing start={start === null ? null : readVersion(start, place)} now={now} inForce={inForce} />
      <section className="protocol-section" aria-labelledby="versions">
        <h2 id="versions">{words.sentence('protocol.versions')}</h2>
        <VersionList place={place} inForce={inForce} />
      </section>
    </div>
  );
}

type ChangingProps = {
  readonly start: Protocol | null;
  readonly now: Protocol | null;
  readonly inForce: string | null;
};

const NO_REFUSALS: readonly Refusal[] = [];

/** The form: what is in force and differs from the published rules, every section, and what is about to change. */
function Changing({ start, now, inForce }: ChangingProps) {
  const { words } = useApp();
  // Until something is changed, the form follows what is in force, also where somebody else puts another in force.
  const [changed, setChanged] = useState<ProtocolChoice | null>(null);
  const untouched = start === null ? NOTHING_CHOSEN_YET : choiceOf(start);
  const choice = changed ?? untouched;
  const [said, setSaid] = useState<string | null>(null);
  const setChoice = (change: (was: ProtocolChoice) => ProtocolChoice) => {
    setSaid(null);
    setChanged((was) => change(was ?? untouched));
  };
  const [open, setOpen] = useState<readonly SectionName[]>([]);
  const read = protocolOf(choice);
  const refusals = read.ok ? NO_REFUSALS : read.refusals;
  const published = publishedBy(choice);
  const wrongIn = refusals
    .map(({ field }) => fieldRefused(field)?.section)
    .filter((one) => one !== undefined);
  const wrongKey = [...new Set(wrongIn)].join();
  // A section in which something is wrong opens, and stays open once it is put right: its reader is still in it.
  useEffect(() => {
    const names = SECTION_NAMES.filter((name) => wrongKey.split(',').includes(name));
    if (names.length > 0) setOpen((was) => [...new Set([...was, ...names])]);
  }, [wrongKey]);
  const goTo = (section: string, key: string) => {
    const name = SECTION_NAMES.find((one) => one === section);
    if (name !== undefined) flushSync(() => setOpen((was) => [...new Set([...was, name])]));
    document.getElementById(fieldId(section, key))?.focus();
  };
  return (
    <>
      {now === null ? null : (
        <section className="protocol-section" aria-labelledby="differs">
          <h2 id="differs">{words.sentence('protocol.differs')}</h2>
          <FromPublished
            protocol={now}
            nameOf={(section, key, name) => (
              <a
                href={`#${fieldId(section, key)}`}
                onClick={(event) => {
                  event.preventDefault();
                  goTo(section, key);
                }}
              >
                {name}
              </a>
            )}
          />
        </section>
      )}
      <GuidelineChoice choice={choice} onChange={setChoice} />
      {SECTION_NAMES.map((section) => (
        <SectionFields
          key={section}
          section={section}
          choice={choice}
          published={published}
          inForce={now}
          refusals={refusals}
          isOpen={open.includes(section)}
          onOpen={(isOpen) =>
            setOpen((was) => (isOpen ? [...was, section] : was.filter((one) => one !== section)))
          }
          onChange={setChoice}
        />
      ))}
      {read.ok ? (
        <section className="protocol-section" aria-labelledby="changes">
          <h2 id="changes">{words.sentence('protocol.changes')}</h2>
          {now === null ? (
            <p>{words.sentence('protocol.changesFromNone')}</p>
          ) : (
            <BetweenTwo
              before={now}
              after={read.value}
              afterIs={words.sentence('protocol.newValue')}
              same={words.sentence('protocol.changesNothing')}
            />
          )}
        </section>
      ) : null}
      <PutInForce
        protocol={read.ok ? read.value : null}
        refusals={refusals}
        inForce={now}
        isNoneOffered={inForce !== null}
        goTo={goTo}
        said={said}
        setSaid={setSaid}
        onChosen={() => setChanged(null)}
      />
    </>
  );
}

/** The rules of the sets that were chosen; of the first of each section where one is not known here any more. */
function publishedBy({ presets }: ProtocolChoice): Protocol {
  for (const chosen of [presets, {}]) {
    const read = presetProtocol(chosen);
    if (read.ok) return read.value;
  }
  throw new Error('The first preset of a section is refused');
}

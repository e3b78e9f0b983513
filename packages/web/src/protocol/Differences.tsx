import { localFields, type Protocol, type SectionName } from '@evenfall/clinical';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { differencesOf } from './differences.js';
import { fieldName, presetTitle, shapeOf, sourceText, valueText } from './protocolText.js';

type OneProps = { readonly name: ReactNode; readonly lines: readonly (readonly [string, string])[] };

/** One rule in which two sides differ: its name, then what each side says. */
function One({ name, lines }: OneProps) {
  return (
    <li>
      <strong>{name}</strong>
      <dl className="facts">
        {lines.map(([side, text]) => (
          <div key={side}>
            <dt>{side}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </li>
  );
}

type PublishedProps = {
  readonly protocol: Protocol;
  /** How a field is named, where the name leads to it. */
  readonly nameOf?: (section: SectionName, key: string, name: string) => ReactNode;
};

/** Every value of the place beside the published one that it took the place of, with that one's source. */
export function FromPublished({ protocol, nameOf }: PublishedProps) {
  const { words } = useApp();
  const differing = localFields(protocol);
  if (differing.length === 0) return <p>{words.sentence('protocol.differsNothing')}</p>;
  return (
    <ul className="differences">
      {differing.map(({ section, key, field }) => {
        const shape = shapeOf(section, key);
        const place = `${section}/${key}`;
        const name = `${words.sentence(`protocol.${section}`)}: ${shape === undefined ? key : fieldName(`${section}/${key}`, shape.unit, words)}`;
        const { value, source, sure } = field.replaces;
        return (
          <One
            key={place}
            name={nameOf?.(section, key, name) ?? name}
            lines={[
              [words.sentence('protocol.publishedValue'), valueText(place, value, field.unit, words)],
              [words.sentence('protocol.ownValue'), valueText(place, field.value, field.unit, words)],
              [words.sentence('protocol.publishedSource'), sourceText(source, sure, words)],
            ]}
          />
        );
      })}
    </ul>
  );
}

type BetweenProps = {
  readonly before: Protocol;
  readonly after: Protocol;
  /** What the later side is called. */
  readonly afterIs: string;
  readonly same: string;
};

/** Every set of rules and every value in which another protocol differs from the one in force. */
export function BetweenTwo({ before, after, afterIs, same }: BetweenProps) {
  const { words } = useApp();
  const { presets, fields: values } = differencesOf(before, after);
  const none = words.sentence('protocol.noneHere');
  if (presets.length + values.length === 0) return <p>{same}</p>;
  const beforeIs = words.sentence('protocol.inForceValue');
  return (
    <ul className="differences">
      {presets.map((one) => {
        const section = one.section as SectionName;
        const title = (id: string | null) => (id === null ? none : presetTitle(section, id, words));
        return (
          <One
            key={section}
            name={`${words.sentence(`protocol.${section}`)}: ${words.sentence('protocol.setOfRules')}`}
            lines={[
              [beforeIs, title(one.before)],
              [afterIs, title(one.after)],
            ]}
          />
        );
      })}
      {values.map(({ section: name, key, before: was, after: is }) => {
        const section = name as SectionName;
        const shape = shapeOf(section, key);
        const place = `${section}/${key}`;
        const text = (field: typeof was) =>
          field === null ? none : valueText(place, field.value, field.unit, words);
        return (
          <One
            key={place}
            name={`${words.sentence(`protocol.${section}`)}: ${shape === undefined ? key : fieldName(`${section}/${key}`, shape.unit, words)}`}
            lines={[
              [beforeIs, text(was)],
              [afterIs, text(is)],
            ]}
          />
        );
      })}
    </ul>
  );
}

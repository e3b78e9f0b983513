import { useId } from 'react';

type ChoicesProps<C extends string> = {
  readonly legend: string;
  readonly choices: readonly { readonly id: C; readonly text: string }[];
  /** Null for none chosen yet. */
  readonly chosen: C | null;
  readonly onChoose: (id: C) => void;
  /** Lists them below each other, for long texts. */
  readonly isListed?: boolean;
  readonly isLegendUnseen?: boolean;
  readonly wrong?: string | null;
};

/** Native radio buttons that are large enough for a thumb. */
export function Choices<C extends string>({
  legend,
  choices,
  chosen,
  onChoose,
  isListed = false,
  isLegendUnseen = false,
  wrong = null,
}: ChoicesProps<C>) {
  const name = useId();
  return (
    <fieldset className="choices" aria-describedby={wrong === null ? undefined : `${name}-wrong`}>
      <legend className={isLegendUnseen ? 'unseen' : undefined}>{legend}</legend>
      <div className={isListed ? 'choices-row choices-listed' : 'choices-row'}>
        {choices.map(({ id, text }) => (
          <label key={id} className="choice">
            <input
              type="radio"
              name={name}
              value={id}
              checked={chosen === id}
              onChange={() => onChoose(id)}
            />
            {text}
          </label>
        ))}
      </div>
      {wrong === null ? null : (
        <p className="field-wrong" id={`${name}-wrong`}>
          {wrong}
        </p>
      )}
    </fieldset>
  );
}

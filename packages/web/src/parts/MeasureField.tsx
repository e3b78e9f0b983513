import { useApp } from '../app/context.js';
import {
  type Measured,
  numberBesideUnit,
  unitNamed,
  type unitOf,
  unitRead,
  unitsOf,
} from '../app/typedMeasure.js';
import { asWritten, withPoints } from '../app/withPoint.js';
import { Field } from './Field.js';

type MeasureProps = {
  readonly of: Exclude<Measured, 'bladderCm'>;
  /** What it is called where it is in a unit. */
  readonly labelIn: (unit: ReturnType<typeof unitOf>) => string;
  readonly hint?: string | undefined;
  readonly wrong: string | null;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** The unit that was chosen here; empty for the usual one of this device. */
  readonly chosen: string;
  readonly onChoose: (unit: string) => void;
};

/**
 * A number with its unit beside it: the usual one of the device, until another one is chosen or typed behind the number.
 * One that is chosen after that takes the place of the one that was typed.
 */
export function MeasureField({ of, labelIn, hint, wrong, text, onText, chosen, onChoose }: MeasureProps) {
  const { words } = useApp();
  const { manner } = words.say;
  const pointed = withPoints(text.trim(), words.say);
  const unit = unitRead({ text: pointed, chosen: unitNamed(of, chosen) }, of, manner);
  const choose = (one: string) => {
    const number = numberBesideUnit(pointed, of, manner);
    if (number !== null) onText(asWritten(number, words.say));
    onChoose(one);
  };
  return (
    <Field label={labelIn(unit)} hint={hint} wrong={wrong}>
      {(control) => (
        <span className="measure-field">
          <input
            {...control}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            className="short-input"
            maxLength={20}
            value={text}
            onChange={(event) => onText(event.target.value)}
          />
          <select
            aria-label={words.sentence(`signs.unit-${of}`)}
            value={unit}
            onChange={(event) => choose(event.target.value)}
          >
            {unitsOf(of).map((one) => (
              <option key={one} value={one}>
                {words.sentence(`settings.${one}`)}
              </option>
            ))}
          </select>
        </span>
      )}
    </Field>
  );
}

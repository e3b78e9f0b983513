import { type CuffRules, cuffScheme, type NamedCuff, POSTURES, SIDES } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { GaugeWarning, gaugeChoiceText, useGaugeAtHand, useRememberGauge } from '../equipment/GaugeChoice.js';
import { Field } from '../parts/Field.js';
import { placeText } from '../pressure/placeText.js';
import type { CarriedPlace } from './carriedPlace.js';

type Form = { readonly text: (field: string) => string; readonly set: (field: string, text: string) => void };

type PlaceProps = {
  readonly form: Form;
  readonly habit: Form;
  readonly carried: CarriedPlace | null;
  readonly place: RunPlace | null;
  readonly windows: readonly number[];
  /** Whether the numbers as typed are by feel: a systolic and no diastolic. */
  readonly isFelt: boolean;
  readonly isAsked: boolean;
  /** Whether the cuff that was chosen is none of the list. */
  readonly isCuffWrong: boolean;
  /** A cuff that was used before and is none of the list, so that it is not carried over; null for none. */
  readonly cuffLeft: NamedCuff | null;
  readonly rules: CuffRules;
};

/** Arm, posture, cuff and how the numbers were read: carried over, in sight, changed in one touch. */
export function QuickPlace({
  form,
  habit,
  carried,
  place,
  windows,
  isFelt,
  isAsked,
  isCuffWrong,
  cuffLeft,
  rules,
}: PlaceProps) {
  const { words } = useApp();
  const [isOpen, setOpen] = useState(carried === null && place === null);
  const { gauges, gauge } = useGaugeAtHand();
  const remember = useRememberGauge();
  const isCarried = carried !== null && form.text('side') === carried.place.side;
  const left =
    cuffLeft === null || form.text('cuff') !== '' ? null : (
      <p className="small quick-wide">
        {words.sentence('quick.cuffLeft', { text: words.title('cuff', cuffLeft.id) })}
      </p>
    );
  if (!isOpen && place !== null && !isCuffWrong) {
    const text = placeText(place, words);
    return (
      <>
        <p className="place-line small">
          <span>
            {isCarried
              ? words.sentence('quick.placeWas', { place: text, at: dayText(carried.at.slice(0, 10), words) })
              : text}
            {' · '}
            {words.sentence(
              isFelt
                ? 'quick.felt'
                : form.text('method') === 'device'
                  ? 'quick.device'
                  : 'quick.auscultation',
            )}
            {habit.text('windowSeconds') === ''
              ? null
              : ` · ${words.sentence('quick.pulseFor')} ${words.sentence('quick.seconds', { seconds: Number(habit.text('windowSeconds')) })}`}
            {gauge === null ? null : ` · ${words.sentence('equipment.whichIs', { text: gauge.named.name })}`}
          </span>
          <button type="button" className="button button-quiet" onClick={() => setOpen(true)}>
            {words.sentence('quick.change')}
          </button>
        </p>
        {left}
        <GaugeWarning gauge={gauge} />
      </>
    );
  }
  const choice = (
    name: string,
    label: string,
    options: readonly (readonly [string, string])[],
    of = form,
  ) => (
    <Field
      label={label}
      wrong={
        name === 'side' && isAsked && form.text('side') === ''
          ? words.sentence('quick.armMissing')
          : name === 'cuff' && isCuffWrong
            ? words.sentence('quick.cuffWrong')
            : null
      }
    >
      {(control) => (
        <select {...control} value={chosenOf(name, of)} onChange={({ target }) => of.set(name, target.value)}>
          {options.map(([id, text]) => (
            <option key={id} value={id}>
              {text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
  // A cuff that is none of the list cannot stand in it.
  const chosenOf = (name: string, of: Form) => (name === 'cuff' && isCuffWrong ? '' : of.text(name));
  const cuffs = cuffScheme(rules.scheme).cuffs.map(({ id }) => [id, words.title('cuff', id)] as const);
  return (
    <div className="quick-place">
      {choice('side', words.sentence('quick.arm'), [
        ...(form.text('side') === '' ? [['', words.sentence('quick.chooseArm')] as const] : []),
        ...SIDES.map((id) => [id, words.sentence(`pressure.${id}`)] as const),
      ])}
      {choice(
        'posture',
        words.sentence('quick.posture'),
        POSTURES.filter((id) => id !== 'stand').map((id) => [id, words.sentence(`pressure.${id}`)] as const),
      )}
      {choice('cuff', words.sentence('quick.cuff'), [['', words.sentence('pressure.cuffNotSaid')], ...cuffs])}
      {left}
      {isFelt ? <p className="small">{words.sentence('quick.felt')}</p> : null}
      {choice('method', words.sentence('quick.how'), [
        ['auscultation', words.sentence('quick.auscultation')],
        ['device', words.sentence('quick.device')],
      ])}
      {choice(
        'windowSeconds',
        words.sentence('quick.pulseFor'),
        [
          ...(habit.text('windowSeconds') === ''
            ? [['', words.sentence('pressure.cuffNotSaid')] as const]
            : []),
          ...windows.map(
            (seconds) => [String(seconds), words.sentence('quick.seconds', { seconds })] as const,
          ),
        ],
        habit,
      )}
      {gauges.length === 0
        ? null
        : choice(
            'gauge',
            words.sentence('equipment.which'),
            [
              ...gauges.map((one) => [one.id, gaugeChoiceText(one, words)] as const),
              ['', words.sentence('equipment.notSaid')] as const,
            ],
            { text: () => gauge?.id ?? '', set: (_, id) => remember(id === '' ? null : id) },
          )}
      <div className="quick-wide">
        <GaugeWarning gauge={gauge} />
      </div>
    </div>
  );
}

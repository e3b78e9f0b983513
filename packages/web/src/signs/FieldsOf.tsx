import { HOW_KNOWN, PAIN_WORDS, SIGN_FIGURES, type SignOf, TEMPERATURE_SITES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { ConsciousnessFields } from './ConsciousnessFields.js';
import { OxygenFields } from './OxygenFields.js';
import { ChoiceField, NumberField, type SignFields, SignMeasureField, TextField } from './signFields.js';
import { type OxygenTarget, PAIN_WAYS, painTool } from './typedSign.js';

type FieldsProps = { readonly fields: SignFields };

/** The fields that one sign needs, and no others. */
export function FieldsOf({ of, fields, target }: FieldsProps & { of: SignOf; target: OxygenTarget }) {
  switch (of) {
    case 'temperature':
      return <TemperatureFields fields={fields} />;
    case 'oxygen-saturation':
      return <OxygenFields fields={fields} target={target} />;
    case 'pain':
      return <PainFields fields={fields} />;
    case 'consciousness':
      return <ConsciousnessFields fields={fields} />;
    case 'weight':
      return <WeightFields fields={fields} />;
    case 'height':
      return <HeightFields fields={fields} />;
  }
}

function TemperatureFields({ fields }: FieldsProps) {
  const { words } = useApp();
  return (
    <>
      <SignMeasureField
        fields={fields}
        of="celsius"
        labelIn={(unit) => words.sentence(`signs.${unit}`)}
        hint={words.sentence('signs.temperatureHint', {})}
      />
      <ChoiceField
        fields={fields}
        field="site"
        label={words.sentence('signs.site')}
        choices={TEMPERATURE_SITES.map((id) => ({ id, text: words.title('temperatureSite', id) }))}
      />
    </>
  );
}

/** Every score of a pain, none left out, so that each is one touch. */
const PAIN_SCORES = Array.from({ length: SIGN_FIGURES.mostPain.value + 1 }, (_, score) => String(score));

function PainFields({ fields }: FieldsProps) {
  const { words } = useApp();
  const way = painTool(fields.text('way'));
  return (
    <>
      <ChoiceField
        fields={fields}
        field="way"
        label={words.sentence('signs.way')}
        initial="numeric"
        choices={PAIN_WAYS.map((id) => ({ id, text: words.sentence(`signs.${id}`) }))}
      />
      {way === 'visual-analogue' ? (
        <NumberField
          fields={fields}
          field="mm"
          label={words.sentence('signs.lineMm')}
          hint={words.sentence('signs.lineHint')}
        />
      ) : way === 'verbal' ? (
        <ChoiceField
          fields={fields}
          field="word"
          label={words.sentence('signs.word')}
          choices={PAIN_WORDS.map((id) => ({ id, text: words.title('painWord', id) }))}
        />
      ) : (
        <div className="pain-scores">
          <ChoiceField
            fields={fields}
            field="score"
            label={words.sentence('signs.score')}
            choices={PAIN_SCORES.map((id) => ({ id, text: id }))}
          />
        </div>
      )}
      <details className="more">
        <summary>{words.sentence('signs.more')}</summary>
        <div className="form">
          <ChoiceField
            fields={fields}
            field="moving"
            label={words.sentence('signs.moving')}
            choices={[
              { id: 'resting', text: words.sentence('signs.isResting') },
              { id: 'moving', text: words.sentence('signs.isMoving') },
            ]}
          />
          <TextField fields={fields} field="where" label={words.sentence('signs.where')} />
        </div>
      </details>
    </>
  );
}

function WeightFields({ fields }: FieldsProps) {
  const { words } = useApp();
  return (
    <>
      <SignMeasureField
        fields={fields}
        of="kg"
        labelIn={(unit) => words.sentence(`signs.${unit}`)}
        hint={words.sentence('signs.weightHint')}
      />
      <HowKnownField fields={fields} />
    </>
  );
}

function HeightFields({ fields }: FieldsProps) {
  const { words } = useApp();
  return (
    <>
      <SignMeasureField
        fields={fields}
        of="cm"
        labelIn={(unit) => words.sentence(`signs.${unit}`)}
        hint={words.sentence('signs.heightHint')}
      />
      <HowKnownField fields={fields} />
      <label className="tick">
        <input
          type="checkbox"
          checked={fields.text('lying') === 'yes'}
          onChange={(event) => fields.set('lying', event.target.checked ? 'yes' : '')}
        />
        <span>{words.sentence('signs.lying')}</span>
      </label>
    </>
  );
}

function HowKnownField({ fields }: FieldsProps) {
  const { words } = useApp();
  return (
    <ChoiceField
      fields={fields}
      field="how"
      label={words.sentence('signs.how')}
      choices={HOW_KNOWN.map((id) => ({ id, text: words.title('howKnown', id) }))}
    />
  );
}

import type { SignContent } from '@evenfall/record';
import type { Column } from './column.js';
import type { Cell } from './csv.js';
import { numberSaid } from './said.js';

type Sign = SignContent['evidence']['sign'];

/** The columns of the signs that are neither counted nor taken with a cuff: degC, %, L/min, points, kg, cm. */
export const SIGN_COLUMNS: readonly Column[] = [
  [
    'celsius',
    orSaid(
      'celsius',
      of('temperature', ({ celsius }) => celsius),
    ),
  ],
  ['temperatureSite', of('temperature', ({ site }) => site)],
  [
    'oxygenSaturationPercent',
    orSaid(
      'percent',
      of('oxygen-saturation', ({ percent }) => percent),
    ),
  ],
  ['onOxygen', of('oxygen-saturation', ({ onOxygen }) => onOxygen)],
  ['oxygenDevice', of('oxygen-saturation', ({ device }) => device)],
  ['oxygenLitresPerMinute', of('oxygen-saturation', ({ litresPerMinute }) => litresPerMinute)],
  ['oxygenPercent', of('oxygen-saturation', ({ oxygenPercent }) => oxygenPercent)],
  ['oxygenScale', of('oxygen-saturation', ({ scale }) => scale)],
  ['oxygenScalePrescriber', of('oxygen-saturation', ({ scalePrescriber }) => scalePrescriber)],
  ['oximeterProbe', of('oxygen-saturation', ({ probe }) => probe)],
  ['oximeterPulsePerMinute', of('oxygen-saturation', ({ pulsePerMinute }) => pulsePerMinute)],
  ['painScore', of('pain', ({ score }) => score)],
  ['painWord', of('pain', ({ word }) => word)],
  ['painTool', of('pain', ({ tool }) => tool)],
  ['painMoving', of('pain', ({ moving }) => moving)],
  ['painWhere', of('pain', ({ where }) => where)],
  ['consciousness', of('consciousness', ({ level }) => level)],
  ['glasgowEyes', of('consciousness', ({ glasgow }) => glasgow?.eyes ?? null)],
  ['glasgowVerbal', of('consciousness', ({ glasgow }) => glasgow?.verbal ?? null)],
  ['glasgowMotor', of('consciousness', ({ glasgow }) => glasgow?.motor ?? null)],
  [
    'weightKg',
    orSaid(
      'kg',
      of('weight', ({ kg }) => kg),
    ),
  ],
  ['weightHow', of('weight', ({ how }) => how)],
  [
    'heightCm',
    orSaid(
      'cm',
      of('height', ({ cm }) => cm),
    ),
  ],
  ['heightHow', of('height', ({ how }) => how)],
  ['heightLying', of('height', ({ lying }) => lying)],
];

/** The number of a sign as it was typed, in its unit, at the end of every row: older tables do not have it. */
export const TYPED_COLUMNS: readonly Column[] = [
  [
    'typedNumber',
    ({ entry }) => (entry.kind === 'sign' ? (entry.content.evidence.typed?.value ?? null) : null),
  ],
  ['typedUnit', ({ entry }) => (entry.kind === 'sign' ? (entry.content.evidence.typed?.unit ?? null) : null)],
];

/** The number of a sign that was read here, or of a value from elsewhere. */
function orSaid(key: string, cell: Column[1]): Column[1] {
  return (row) => cell(row) ?? numberSaid(row.entry, key);
}

function of<Of extends Sign['of']>(name: Of, cell: (sign: Extract<Sign, { of: Of }>) => Cell): Column[1] {
  return ({ entry }) => {
    if (entry.kind !== 'sign') return null;
    const { sign } = entry.content.evidence;
    return sign.of === name ? cell(sign as Extract<Sign, { of: Of }>) : null;
  };
}

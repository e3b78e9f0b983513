import type { SignContent } from '@evenfall/record';
import type { Column } from './column.js';
import type { Cell } from './csv.js';

type Sign = SignContent['evidence']['sign'];

/** The columns of the signs that are neither counted nor taken with a cuff: degC, %, L/min, points, kg, cm. */
export const SIGN_COLUMNS: readonly Column[] = [
  ['celsius', of('temperature', ({ celsius }) => celsius)],
  ['temperatureSite', of('temperature', ({ site }) => site)],
  ['oxygenSaturationPercent', of('oxygen-saturation', ({ percent }) => percent)],
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
  ['weightKg', of('weight', ({ kg }) => kg)],
  ['weightHow', of('weight', ({ how }) => how)],
  ['heightCm', of('height', ({ cm }) => cm)],
  ['heightHow', of('height', ({ how }) => how)],
  ['heightLying', of('height', ({ lying }) => lying)],
];

function of<Of extends Sign['of']>(name: Of, cell: (sign: Extract<Sign, { of: Of }>) => Cell): Column[1] {
  return ({ entry }) => {
    if (entry.kind !== 'sign') return null;
    const { sign } = entry.content.evidence;
    return sign.of === name ? cell(sign as Extract<Sign, { of: Of }>) : null;
  };
}

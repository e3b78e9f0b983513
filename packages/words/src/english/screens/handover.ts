import type { Say } from '../../say.js';
import { span } from './people.js';

type Text = { text: string };
/** An arm in a word, and how much higher it read. */
type Arm = { side: string; mmHg: number };

/** From which falls of systolic and diastolic on the test speaks of one, mmHg. */
type FallLimits = { readonly systolic: number; readonly diastolic: number };

/** After how many minutes on the feet; 0 is at once, null is not known. */
type OnFeet = { readonly minutes: number | null };

function onFeet({ minutes }: OnFeet, say: Say): string {
  if (minutes === null) return ' on the feet';
  return minutes === 0 ? ' at once on the feet' : ` at ${say.short(minutes)} min on the feet`;
}

/** A person's values for another place: as a file, or as plain text by a template. And values that came from another place. */
export const handover = {
  title: 'Hand over',
  open: 'Hand over',
  asText: 'As plain text',
  asFile: 'As a file',
  noRound: 'No signed round is in the chart yet.',
  whichRound: 'Which round',
  whichTemplate: 'Template',
  line: 'One line',
  handover: 'Hand-over paragraph',
  letter: 'Letter paragraph',
  preview: 'What will be copied',
  copy: 'Copy',
  copied: 'Copied.',
  notCopied: 'The browser did not copy it: select the text above and copy it.',
  edit: 'Change the template',
  template: 'Template',
  templateHint:
    '{pulse} is a field. [, pulse {pulse}] is left out where no field in it is known. A sign written twice, such as {{ or ]], is the sign itself.',
  fields: 'Fields, to touch or to type',
  keptHere: 'Templates are kept on this device.',
  asBrought: 'As it was',
  templateWrong: 'Something in the template is not known: change it below.',
  notKnown: 'not known',
  isSigned: 'signed',
  isPreliminary: 'Preliminary, not countersigned',
  isUnsigned: 'Not signed',
  isInError: 'Entered in error',
  disputed: (f: Text) => `${f.text} (two amendments disagree)`,
  born: (f: Text) => `born ${f.text}`,
  numbered: (f: Text) => `number ${f.text}`,
  amended: 'amended',
  amendedFrom: (f: Text) => `amended, was ${f.text}`,
  gaugeFailed: (f: { name: string }) => `in doubt: read from ${f.name}, a gauge that failed a check`,
  gaugeNotKnown: 'whether its gauge failed a check is not known here',
  /** Of a round that a supervisor looked at and did not rely on, and why. */
  isNotReliedOn: (f: { text: string | null }) =>
    `Seen by a supervisor, and not relied on${f.text === null ? '' : ` (${f.text})`}`,
  feltIrregular: 'felt irregular',
  /** Where a pressure was taken: arm and posture. */
  placed: (f: { arm: string; posture: string }) => `${f.arm}, ${f.posture}`,
  /** Whom an alert was told to, when, and what was said back. */
  told: (f: { conditions: string; whom: string; at: string; said: string }) =>
    `Told to ${f.whom}, ${f.at} (${f.conditions}). Said back: ${f.said}.`,
  notTold: (f: { conditions: string }) =>
    `Not closed: nobody is noted as told of this yet (${f.conditions}).`,
  /** A category that rests on no average. */
  byOneReading: (f: { text: string; highestOf: number }, say: Say) =>
    `${f.text}, by ${f.highestOf < 2 ? 'one reading' : `the highest of ${say.short(f.highestOf)} readings and no average`}`,
  caution:
    'No category of high pressure is given: it says nothing of a pressure that is low or that falls on standing.',
  /** Under a text whose template has no field for it. */
  actNowUnder: (f: Text) => `Act now: ${f.text}`,
  leftOut: (f: { fields: string }) =>
    `This template has no ${f.fields}: what that would say is put under the text wherever there is any, so that no alert and no caution is left out.`,
  /** Alerts that nobody closed, in a few words. */
  alertOpen: (f: { conditions: string }) => `Act now, nobody is noted as told yet: ${f.conditions}.`,
  longerAsked: 'a short count; a longer one was asked for',
  right: 'right',
  left: 'left',
  armsSame: 'Both arms read the same.',
  armHigher: (f: Arm, say: Say) => `The ${f.side} arm read ${say.short(f.mmHg)} mmHg higher.`,
  armHigherOnce: (f: Arm, say: Say) =>
    `The ${f.side} arm read ${say.short(f.mmHg)} mmHg higher, not yet confirmed by a second pair.`,
  armHigherUnlike: (f: Arm, say: Say) =>
    `The ${f.side} arm read ${say.short(f.mmHg)} mmHg higher, but the arms were not taken alike, so which one is higher is not known.`,
  fell: (f: Text) => `The pressure fell on standing ${f.text}.`,
  fellBy: (
    f: {
      systolic: number | null;
      diastolic: number | null;
      minutes: number | null;
    },
    say: Say,
  ) => {
    const parts = [
      ...(f.systolic !== null && f.systolic > 0 ? [`${say.short(f.systolic)} systolic`] : []),
      ...(f.diastolic !== null && f.diastolic > 0 ? [`${say.short(f.diastolic)} diastolic`] : []),
    ];
    return `by ${say.allOf(parts)}${f.minutes === null ? '' : ` at ${say.short(f.minutes)} min`}`;
  },
  noFall: (f: FallLimits, say: Say) =>
    `On standing the pressure did not fall by ${say.short(f.systolic)}/${say.short(f.diastolic)} mmHg.`,
  fallNotExcluded: (f: FallLimits, say: Say) =>
    `No fall of ${say.short(f.systolic)}/${say.short(f.diastolic)} mmHg in the readings taken standing; one is not excluded.`,
  /** A fall that came later than a fall is looked for, after the minutes of it. */
  fellLate: 'It is a delayed fall, later than three minutes.',
  fallOver: (f: OnFeet, say: Say) => `It was over${onFeet(f, say)}.`,
  lowOnFeet: (f: OnFeet & { systolic: number | null }, say: Say) =>
    f.systolic === null
      ? `The systolic was low${onFeet(f, say)}.`
      : `The systolic was low, ${say.short(f.systolic)}${onFeet(f, say)}.`,
  unwellOnFeet: (f: OnFeet, say: Say) => `The person felt unwell${onFeet(f, say)}.`,
  pulseRose: (f: { perMinute: number | null }, say: Say) =>
    `The pulse rose${f.perMinute === null ? '' : ` by ${say.rate(f.perMinute)} a minute`} on the feet, without a fall in the readings taken.`,
  again: (f: { from: string; by: string; why: string }) =>
    `Pressure due again from ${f.from}, by ${f.by} (${f.why}).`,
  /** One whose time has passed; a text is read later than it was written, so that it says when that was. */
  againLate: (f: { by: string; why: string; minutes: number; now: string }, say: Say) =>
    `Pressure was due again by ${f.by} (${f.why}): late by ${span(f.minutes, say)} at ${f.now}.`,
  /** One without an end whose time has come. */
  againSince: (f: { from: string; why: string; minutes: number; now: string }, say: Say) =>
    `Pressure has been due again since ${f.from} (${f.why}): for ${span(f.minutes, say)} at ${f.now}.`,
  againFrom: (f: { from: string; why: string }) => `Pressure due again from ${f.from} (${f.why}).`,
  ofOtherRound: (f: { text: string; at: string }) => `${f.text}, by the round of ${f.at}`,
  /** A mean as it is charted, mmHg. */
  lineTemplate:
    '[{identity}. ][{alerts} ][{again} ]{day} {time}[: {pressure} mmHg][ (mean of {meanOf})][, {place}][, pulse {pulse}][, breaths {breaths}][, {temperature}][, {saturation}][, early-warning score {score}].[ Also {others}.][ {armsFound}][ {standingFound}]',
  handoverTemplate:
    '[{identity}\n][Act now: {actNow}\n][{told}\n][{again}\n]{day}, {time}, by {who} ({role}).[\n{begun}.][\n{rest}][\nPressure {pressure} mmHg.][ At the {place}.][ Mean of {meanOf}.][\nAlso {others}.][\n{armsFound}][\n{standingFound}][\nPulse per minute: {pulse}.][\nBreaths per minute: {breaths}.][\nTemperature {temperature}.][\nSaturation {saturation}.][\nPain {pain}.][\nConsciousness: {consciousness}.][\nEarly-warning score {score}.][\n{notDone}][\nNote: {note}][\n{doubts}]',
  letterTemplate:
    'On {day} at {time} I took the vital signs[ of {name}][ (born {birthDate})].[ {alerts}][ {again}][ The blood pressure was {pressure} mmHg.][ It was taken at the {place}.][ {rest}][ It is the mean of {meanOf} readings.][ Other readings: {others}.][ {armsFound}][ {standingFound}][ Category: {category}.][ {caution}][ The pulse per minute was {pulse}.][ The breaths per minute were {breaths}.][ The early-warning score was {score}.][ {notDone}]',
  fhir: 'Download for another system (FHIR)',
  fhirHint: 'Every value with how it was taken, and the whole record for another Evenfall.',
  csv: 'Download as a table (CSV)',
  csvHint: 'One row for each value that was ever charted, and for each reading at home or over 24 hours.',
  nothingInTable:
    'Nothing is in this chart yet that a table has a row for: the file would hold its headings alone.',
  withIdentity: 'With name, birth date and number',
  withIdentityHint: 'Left out unless you say so. Notes go as they were written and may name somebody.',
  inventedFile: 'The file says INVENTED.',
  elsewhere: 'From elsewhere',
  elsewhereHint:
    'Said by another system or a table: nobody here measured it, and nothing is worked out from it.',
  pressureIs: (f: { systolic: number; diastolic: number | null }, say: Say) =>
    `${say.short(f.systolic)}/${f.diastolic === null ? '–' : say.short(f.diastolic)} mmHg`,
  rateIs: (f: { perMinute: number }, say: Say) => `${say.short(f.perMinute)} /min`,
  celsiusIs: (f: { celsius: number }, say: Say) => say.temperature(f.celsius),
  percentIs: (f: { percent: number }, say: Say) => `${say.short(f.percent)} %`,
  kgIs: (f: { kg: number }, say: Say) => say.mass(f.kg),
  cmIs: (f: { cm: number }, say: Say) => say.length(f.cm),
  saidBy: (f: Text) => `Said by ${f.text}`,
  saidByNobody: 'Nobody is named',
  sentAs: (f: Text) => `sent as ${f.text}`,
  meanUntil: (f: Text) => `mean until ${f.text}`,
  importedBy: (f: { who: string; at: string }) => `Brought in by ${f.who}, ${f.at}`,
  unclearCorrection: (f: { text: string }) =>
    `Its source says it as a correction; which measurement it corrects is not known here. Under the same name there is one of ${f.text}.`,
  mayBeCorrected: (f: { text: string }) =>
    `It may have been corrected: its source says a correction under the same name, of ${f.text}, and does not say of which measurement.`,
  markWrong: 'This should not be in this chart',
  markNow: 'Mark as entered in error',
} as const;

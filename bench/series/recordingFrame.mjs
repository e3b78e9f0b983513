import { MEASURES } from './recordingColumns.mjs';

const LIMITS = { day: { systolic: 135, diastolic: 85 }, night: { systolic: 120, diastolic: 70 } };

/** The columns of `columnsOf` that the frame works out: the plainer quarter of them. */
export const FRAME_COLUMNS = [
  'n_day',
  'n_night',
  ...MEASURES.flatMap((m) => [
    ...['day', 'night', 'sd_day', 'sd_night', 'mean', 'sd', 'cv', 'trapezoid', 'weighted', 'arv', 'arvt', 'wsd', 'one_mesor', 'one_1_amplitude'].map((one) => `${m}_${one}`), // biome-ignore format: one list
    ...(m === 'pulse' ? [] : ['load_day', 'load_night', 'dip'].map((one) => `${m}_${one}`)),
  ]),
];

/** Readings of recordings as a frame of arquero. */
export function readingsFrame(aq, series) {
  return aq.table({
    recording: series.flatMap((one, k) => one.map(() => k)),
    h: series.flatMap((one) => one.map(({ atMs }) => atMs / 3_600_000)),
    minute: series.flatMap((one) => one.map(({ minuteOfDay }) => minuteOfDay)),
    ...Object.fromEntries(
      MEASURES.map((m) => [m, series.flatMap((one) => one.map((reading) => reading[m]))]),
    ),
  });
}

/** One harmonic by the normal equations (Cramer). */
function curve(m, col) {
  const [n, c, s, cc, cs, ss] = ['n', 'c', 's', 'cc', 'cs', 'ss'].map((one) => col(one));
  const [y, yc, ys] = ['y', 'yc', 'ys'].map((one) => col(`${m}_${one}`));
  const det = (a, b, d, e, f, g, h, i, j) => `(${a}*(${f}*${j}-${g}*${i})-${b}*(${e}*${j}-${g}*${h})+${d}*(${e}*${i}-${f}*${h}))`; // biome-ignore format: one formula
  const whole = det(n, c, s, c, cc, cs, s, cs, ss);
  const at = (k) => {
    const rows = [[n, c, s], [c, cc, cs], [s, cs, ss]].map((row, r) => row.map((one, i) => (i === k ? [y, yc, ys][r] : one))); // biome-ignore format: one formula
    return `(${det(...rows.flat())}/${whole})`;
  };
  return { mesor: at(0), beta: at(1), gamma: at(2) };
}

/** Plain statistics of each recording: one curve of one harmonic, no errors of it, no rises, no editing. */
export function framed(frame) {
  const derived = {
    night: '(d) => d.minute >= 1380 || d.minute < 420',
    c: '(d) => op.cos(2 * 3.141592653589793 * d.minute / 1440)',
    s: '(d) => op.sin(2 * 3.141592653589793 * d.minute / 1440)',
    gap: '(d) => op.lead(d.h, 1, null) - d.h',
    has: '(d) => op.lead(d.h, 1, null) !== null',
  };
  for (const m of MEASURES) derived[`next_${m}`] = `(d) => op.lead(d.${m}, 1, null)`;
  const more = {
    cc: '(d) => d.c * d.c',
    cs: '(d) => d.c * d.s',
    ss: '(d) => d.s * d.s',
    gap: '(d) => d.has ? d.gap : null',
  };
  for (const m of MEASURES) {
    more[`${m}_d`] = `(d) => d.night ? null : d.${m}`;
    more[`${m}_n`] = `(d) => d.night ? d.${m} : null`;
    more[`${m}_step`] = `(d) => d.has ? abs(d.next_${m} - d.${m}) : null`;
    more[`${m}_gstep`] = `(d) => d.has ? d.gap * abs(d.next_${m} - d.${m}) : null`;
    more[`${m}_area`] = `(d) => d.has ? d.gap * (d.next_${m} + d.${m}) / 2 : null`;
    more[`${m}_yc`] = `(d) => d.${m} * d.c`;
    more[`${m}_ys`] = `(d) => d.${m} * d.s`;
    if (m === 'pulse') continue;
    more[`${m}_ld`] = `(d) => d.night ? null : (d.${m} >= ${LIMITS.day[m]} ? 100 : 0)`;
    more[`${m}_ln`] = `(d) => d.night ? (d.${m} >= ${LIMITS.night[m]} ? 100 : 0) : null`;
  }
  for (const key of Object.keys(more)) more[key] = more[key].replaceAll('abs(', 'op.abs(');
  const rolled = { n: '() => op.count()', gaps: '(d) => op.sum(d.gap)' };
  for (const one of ['c', 's', 'cc', 'cs', 'ss']) rolled[one] = `(d) => op.sum(d.${one})`;
  rolled.n_day = '(d) => op.valid(d.systolic_d)';
  rolled.n_night = '(d) => op.valid(d.systolic_n)';
  for (const m of MEASURES) {
    const of = { day: 'mean(d.M_d)', night: 'mean(d.M_n)', sd_day: 'stdev(d.M_d)', sd_night: 'stdev(d.M_n)', mean: 'mean(d.M)', sd: 'stdev(d.M)', area: 'sum(d.M_area)', arv: 'mean(d.M_step)', gstep: 'sum(d.M_gstep)', y: 'sum(d.M)', yc: 'sum(d.M_yc)', ys: 'sum(d.M_ys)', ...(m === 'pulse' ? {} : { load_day: 'mean(d.M_ld)', load_night: 'mean(d.M_ln)' }) }; // biome-ignore format: one list
    for (const [key, call] of Object.entries(of))
      rolled[`${m}_${key}`] = `(d) => op.${call.replaceAll('M', m)}`;
  }
  const made = {};
  for (const m of MEASURES) {
    const fitted = curve(m, (name) => `d.${name}`);
    made[`${m}_cv`] = `(d) => 100 * d.${m}_sd / d.${m}_mean`;
    made[`${m}_trapezoid`] = `(d) => d.${m}_area / d.gaps`;
    made[`${m}_arvt`] = `(d) => d.${m}_gstep / d.gaps`;
    made[`${m}_weighted`] = `(d) => (16 * d.${m}_day + 8 * d.${m}_night) / 24`;
    made[`${m}_wsd`] = `(d) => (16 * d.${m}_sd_day + 8 * d.${m}_sd_night) / 24`;
    made[`${m}_one_mesor`] = `(d) => ${fitted.mesor}`;
    made[`${m}_one_1_amplitude`] = `(d) => op.sqrt(op.pow(${fitted.beta}, 2) + op.pow(${fitted.gamma}, 2))`;
    if (m !== 'pulse') made[`${m}_dip`] = `(d) => 100 * (d.${m}_day - d.${m}_night) / d.${m}_day`;
  }
  const table = frame.groupby('recording').derive(derived).derive(more).rollup(rolled).derive(made);
  return table;
}

import { MEASURES, PRESSURES } from './recordingColumns.mjs';

/** Limits of the rule set that both are held against, mmHg (ISH 2020: out-of-office handbook 8). */
const LIMITS = { day: { systolic: 135, diastolic: 85 }, night: { systolic: 120, diastolic: 70 } };
const WAVES = ['c1', 's1', 'c2', 's2'];
/** Hours that are one instant: what rounding leaves between two ways to one. */
const INSTANT = 1e-6;
/** The length of an hour whose end is not of it. */
const HOUR = 1 - INSTANT;
const BASES = ['1', ...WAVES];

/**
 * The statistics of `ambulatoryResult` as one query over a table `r` of `recording`, `h` (hours), `minute` (of the day),
 * `systolic`, `diastolic`, `pulse`: a row for each recording, columns under the names of `columnsOf`. The night is from 23:00 to
 * 07:00. Least squares by the normal equations, eliminated in steps; the sum of squares left over from them; the upper tail of F
 * in closed form, since one of its degrees of freedom is 2 or 4.
 */
export function recordingSql() {
  const made = Object.entries(columns());
  return `
with cut as (
  select *, min(h) over (partition by recording) h0 from r
), kept as (
  select recording, h - h0 as h, minute, systolic, diastolic, pulse, minute >= 1380 or minute < 420 as night
  from cut where h < h0 + 24 and systolic between 70 and 260 and diastolic between 40 and 150
    and systolic - diastolic between 20 and 150 and pulse between 20 and 200
), t as (
  select *, ${WAVES.map((wave) => `${wave[0] === 'c' ? 'cos' : 'sin'}(${wave[1]}*2*pi()*minute/1440.0) ${wave}`).join(', ')},
    systolic - diastolic pp, diastolic + (systolic - diastolic)/3.0 mean_ap, systolic*pulse dp,
    lead(h) over w - h gap, lead(night) over w = night as same_period, (lead(h, 1, h) over p - lag(h, 1, h) over p)/2 time_of,
    min(case when night then h - ((minute - 1380 + 1440) % 1440)/60.0 end) over (partition by recording) bed,
    fmod(min(case when night then systolic*1000 + h end) over (partition by recording), 1000) lowest_h,
    avg(systolic) over hour hour_mean, count(*) over hour hour_n,
    avg(systolic) over (partition by recording, night order by h rows between 1 preceding and 1 following) around,
    ${MEASURES.map((m) => `lead(${m}) over w next_${m}`).join(', ')}
  from kept window w as (partition by recording order by h), p as (partition by recording, night order by h),
    hour as (partition by recording order by h range between current row and ${HOUR} following)
), a as (
  select recording, count(*) n, max(gap) longest_gap, max(h) span,
    ${BASES.flatMap((one, i) => BASES.slice(i).map((other, j) => `sum(${one}*${other}) n${i}${i + j}`)).join(', ')},
    count(*) filter (not night) n_day, count(*) filter (night) n_night,
    ${['pp', 'mean_ap', 'dp'].map((one) => `avg(${one}) ${one}_all, avg(${one}) filter (not night) ${one}_day, avg(${one}) filter (night) ${one}_night`).join(', ')},
    avg(systolic) filter (h >= bed + 8 and h < bed + 10) risen, avg(systolic) filter (h >= bed + 6 and h < bed + 8) before_waking,
    avg(systolic) filter (h >= bed - 2 and h < bed) before_bed, arg_min(around, systolic*1000 + h) filter (night) trough,
    max(h) filter (h < bed + 8) lying_h, arg_max(systolic, h) filter (h < bed + 8) lying,
    min(h) filter (h >= bed + 8) up_h, arg_min(systolic, h) filter (h >= bed + 8) up, any_value(bed) bed,
    min(hour_mean) filter (night and hour_n >= 2 and h + ${HOUR} <= bed + 8) lowest_hour,
    arg_min(systolic, h, 4) filter (h >= bed + 8) first_up, min(h, 4) filter (h >= bed + 8) first_up_h, min(systolic, 3) filter (night) lowest_asleep,
    regr_slope(systolic, h) filter (h >= lowest_h - ${INSTANT} and h < bed + 10) rate, count(*) filter (h >= lowest_h - ${INSTANT} and h < bed + 10) rate_n,
    regr_slope(diastolic, systolic) slope, regr_intercept(diastolic, systolic) intercept, corr(diastolic, systolic) r,
    ${MEASURES.map(sums).join(',\n    ')}
  from t group by recording
), hourly as (
  select recording, ${MEASURES.map((m) => `avg(${m}) ${m}_hourly`).join(', ')} from (
    select recording, minute//60 clock, ${MEASURES.map((m) => `avg(${m}) ${m}`).join(', ')} from t group by recording, clock
  ) group by recording
), e1_0 as (select *, ${MEASURES.flatMap((m) => BASES.map((_, i) => `${m}_y${i} - ${m}_mean*n0${i} ${m}_right${i}`)).join(', ')},
    ${MEASURES.map((m) => `${m}_yy - n*${m}_mean*${m}_mean ${m}_total`).join(', ')} from a
), ${elimination('e1_', 3)}, e2_0 as (select * from e1_3), ${elimination('e2_', 5)}, fitted as (
  select *, ${MEASURES.flatMap((m) => [...coefficients(m, 'e1_', 'one', 3), ...coefficients(m, 'e2_', 'two', 5)]).join(', ')} from e2_5
), left_over as (
  select *, ${MEASURES.flatMap((m) => [leftOver(m, 'one', 3), leftOver(m, 'two', 5)]).join(', ')} from fitted
), tested as (
  select *, ${MEASURES.flatMap((m) => [`(${m}_total - ${m}_one_sse)/2/(${m}_one_sse/(n - 3)) ${m}_one_f`, `(${m}_total - ${m}_two_sse)/4/(${m}_two_sse/(n - 5)) ${m}_two_f`]).join(', ')} from left_over
)
select ${made.map(([name, by]) => `${by} as "${name}"`).join(', ')} from tested join hourly using (recording) order by recording`;
}

function sums(m) {
  const both = (name, call) =>
    `${call} filter (not night) ${m}_${name}_day, ${call} filter (night) ${m}_${name}_night`;
  const over = (period) => `greatest(0, ${m} - ${LIMITS[period][m]})`;
  const nextOver = (period) => `greatest(0, next_${m} - ${LIMITS[period][m]})`;
  const loads = (period) => `
    avg(100.0*(${m} >= ${LIMITS[period][m]})::int) filter (${period === 'night' ? 'night' : 'not night'}) ${m}_load_${period},
    100*sum(time_of*(${m} >= ${LIMITS[period][m]})::int) filter (${period === 'night' ? 'night' : 'not night'})
      / sum(time_of) filter (${period === 'night' ? 'night' : 'not night'}) ${m}_time_load_${period},
    sum(gap*(${over(period)} + ${nextOver(period)})/2.0) filter (same_period and ${period === 'night' ? 'night' : 'not night'}) ${m}_area_${period}`;
  return [
    `avg(${m}) filter (not night) ${m}_day, avg(${m}) filter (night) ${m}_night`,
    both('sd', `stddev_samp(${m})`),
    both('least', `min(${m})`),
    both('most', `max(${m})`),
    `min(${m}) ${m}_least_all, max(${m}) ${m}_most_all`,
    `avg(${m}) ${m}_mean, stddev_samp(${m}) ${m}_sd, sum(gap*(${m}+next_${m})/2.0) ${m}_area`,
    `arg_min(${m}, h) ${m}_first, arg_max(${m}, h) ${m}_last`,
    `avg(abs(next_${m}-${m})) ${m}_arv, sum(gap*abs(next_${m}-${m}))/sum(gap) ${m}_arvt`,
    `avg(abs(next_${m}-${m})) filter (gap <= 2) ${m}_arv_without_gaps`,
    `avg(abs(next_${m}-${m})) filter (same_period and not night) ${m}_arv_day, avg(abs(next_${m}-${m})) filter (same_period and night) ${m}_arv_night`,
    `stddev_pop(${m}) ${m}_sd_by_n, sqrt(avg((next_${m}-${m})*(next_${m}-${m}))) ${m}_rmssd`,
    `sqrt((regr_syy(${m}, h) - regr_sxy(${m}, h)*regr_sxy(${m}, h)/regr_sxx(${m}, h))/(count(*) - 1)) ${m}_sd_about_trend`,
    `sum(${m}*${m}) ${m}_yy, ${BASES.map((one, i) => `sum(${m}*${one}) ${m}_y${i}`).join(', ')}`,
    ...(PRESSURES.includes(m) ? [loads('day'), loads('night')] : []),
  ].join(', ');
}

/** Gauss-Jordan of the normal equations with the identity beside them, a step in each query of the chain. */
function elimination(prefix, size) {
  const range = [...Array(size).keys()];
  let cells = range.map((i) => [
    ...range.map((j) => `n${Math.min(i, j)}${Math.max(i, j)}`),
    ...range.map((j) => (i === j ? '1' : '0')),
  ]);
  const steps = [];
  for (const k of range) {
    const next = cells.map((row, i) =>
      row.map((cell, j) => {
        const over = cells[k][j] === '0' ? '0' : `${cells[k][j]}/${cells[k][k]}`;
        if (i === k) return over;
        if (over === '0' || cells[i][k] === '0') return cell;
        return `${cell} - ${cells[i][k]}*(${over})`;
      }),
    );
    const named = next.flatMap((row, i) => row.flatMap((cell, j) => (j <= k || /^[01]$/.test(cell) ? [] : [`${cell} ${prefix}${k}_${i}_${j}`]))); // biome-ignore format: one thought
    steps.push(`${prefix}${k + 1} as (select *, ${named.join(', ')} from ${prefix}${k})`);
    cells = next.map((row, i) => row.map((cell, j) => (j <= k ? (i === j ? '1' : '0') : /^[01]$/.test(cell) ? cell : `${prefix}${k}_${i}_${j}`))); // biome-ignore format: one thought
  }
  return steps.join(', ');
}

/** A cell of the inverse that the elimination of that size left. */
const inverse = (prefix, size, i, j) => `${prefix}${size - 1}_${i}_${size + j}`;

function coefficients(m, prefix, which, size) {
  const range = [...Array(size).keys()];
  return range.map((i) => `${range.map((j) => `${inverse(prefix, size, i, j)}*${m}_right${j}`).join(' + ')} ${m}_${which}_b${i}`); // biome-ignore format: one thought
}

function leftOver(m, which, size) {
  const range = [...Array(size).keys()];
  return `${m}_total - (${range.map((i) => `${m}_${which}_b${i}*${m}_right${i}`).join(' + ')}) ${m}_${which}_sse`;
}

/** Every column of the answer by its name. */
function columns() {
  const out = { n_day: 'n_day', n_night: 'n_night', longest_gap: 'longest_gap' };
  for (const m of MEASURES) {
    for (const one of ['day', 'night', 'sd_day', 'sd_night', 'mean', 'sd', 'arv', 'arvt', 'hourly', 'arv_without_gaps', 'arv_day', 'arv_night', 'least_day', 'least_night', 'least_all', 'most_day', 'most_night', 'most_all', 'sd_by_n', 'rmssd', 'sd_about_trend']) out[`${m}_${one}`] = `${m}_${one}`; // biome-ignore format: one list
    out[`${m}_range`] = `${m}_most_all - ${m}_least_all`;
    out[`${m}_peak`] = `${m}_most_all - ${m}_mean`;
    out[`${m}_trough`] = `${m}_mean - ${m}_least_all`;
    out[`${m}_cv`] = `100*${m}_sd/${m}_mean`;
    out[`${m}_trapezoid`] = `${m}_area/span`;
    out[`${m}_closed`] = `(${m}_area + (24 - span)*(${m}_first + ${m}_last)/2.0)/24`;
    out[`${m}_weighted`] = `(16*${m}_day+8*${m}_night)/24`;
    out[`${m}_wsd`] = `(16*${m}_sd_day+8*${m}_sd_night)/24`;
    Object.assign(out, curve(m, 'e1_', 'one', 3), curve(m, 'e2_', 'two', 5));
  }
  for (const [name, by] of [['pulse_pressure', 'pp'], ['mean_arterial', 'mean_ap'], ['double_product', 'dp']]) for (const period of ['day', 'night', 'all']) out[`${name}_${period}`] = `${by}_${period}`; // biome-ignore format: one list
  for (const m of PRESSURES) {
    out[`${m}_dip`] = `100*(${m}_day-${m}_night)/${m}_day`;
    for (const period of ['day', 'night']) for (const one of ['load', 'time_load', 'area']) out[`${m}_${one}_${period}`] = `${m}_${one}_${period}`; // biome-ignore format: one list
  }
  out.surge_trough = 'risen - trough';
  out.surge_waking = 'risen - before_waking';
  out.evening_fall = 'before_bed - trough';
  out.surge_rising = 'case when bed + 8 - lying_h <= 0.5 and up_h - bed - 8 <= 0.5 then up - lying end';
  out.surge_moving = 'risen - lowest_hour';
  out.surge_four =
    'case when len(first_up) = 4 and first_up_h[4] - bed - 8 <= 4 and len(lowest_asleep) = 3 then list_avg(first_up) - list_avg(lowest_asleep) end';
  out.surge_rate = 'case when risen is not null and rate_n >= 3 then rate end';
  return { ...out, stiffness_slope: fitting('slope'), stiffness_intercept: fitting('intercept'), stiffness_r: fitting('r'), stiffness_index: fitting('1 - slope'), stiffness_symmetric: fitting('1 - slope/r'), stiffness_bisectorSlope: fitting(`(slope*${STEEP} - 1 + sqrt((1 + slope*slope)*(1 + ${STEEP}*${STEEP})))/(slope + ${STEEP})`) }; // biome-ignore format: one list
}

/** The line of x on y, seen as a slope of y on x. */
const STEEP = '(slope/(r*r))';

/** Nothing where the line of the pressures fits too badly (out-of-office handbook 14). */
const fitting = (one) => `case when r*r >= 0.36 then ${one} end`;

function curve(m, prefix, which, size) {
  const sse = `${m}_${which}_sse`;
  const variance = `(${sse}/(n - ${size}))`;
  const f = `${m}_${which}_f`;
  const b = `((n - ${size})/2.0)`;
  const x = `((n - ${size})/(n - ${size} + ${size - 1}*${f}))`;
  const out = {
    [`${m}_${which}_mesor`]: `${m}_mean + ${m}_${which}_b0`,
    [`${m}_${which}_r2`]: `1 - ${sse}/${m}_total`,
    [`${m}_${which}_sse`]: sse,
    [`${m}_${which}_f`]: f,
    [`${m}_${which}_p`]: size === 3 ? `pow(${x}, ${b})` : `pow(${x}, ${b})*(1 + ${b}*(1 - ${x}))`,
    [`${m}_${which}_mesor_se`]: `sqrt(${variance}*${inverse(prefix, size, 0, 0)})`,
  };
  for (let j = 1; 2 * j < size; j++) {
    const name = `${m}_${which}_${j}`;
    const [beta, gamma] = [`${m}_${which}_b${2 * j - 1}`, `${m}_${which}_b${2 * j}`];
    const [bb, bg, gg] = [[0, 0], [0, 1], [1, 1]].map(([p, q]) => inverse(prefix, size, 2 * j - 1 + p, 2 * j - 1 + q)); // biome-ignore format: one thought
    const amplitude = `sqrt(${beta}*${beta} + ${gamma}*${gamma})`;
    const hours = 24 / j;
    out[`${name}_beta`] = beta;
    out[`${name}_gamma`] = gamma;
    out[`${name}_amplitude`] = amplitude;
    out[`${name}_peak`] = `fmod(atan2(${gamma}, ${beta})/(2*pi()) + 1, 1)*${hours}`;
    out[`${name}_amplitude_se`] = `sqrt(${variance}*(${beta}*${beta}*${bb} + 2*${beta}*${gamma}*${bg} + ${gamma}*${gamma}*${gg}))/${amplitude}`; // biome-ignore format: one formula
    out[`${name}_peak_se`] = `sqrt(${variance}*(${gamma}*${gamma}*${bb} - 2*${beta}*${gamma}*${bg} + ${beta}*${beta}*${gg}))/(${beta}*${beta} + ${gamma}*${gamma})*${hours / (2 * Math.PI)}`; // biome-ignore format: one formula
  }
  return out;
}

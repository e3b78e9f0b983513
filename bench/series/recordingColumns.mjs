export const MEASURES = ['systolic', 'diastolic', 'pulse'];
export const PRESSURES = ['systolic', 'diastolic'];
/** What of an answer is worked out of numbers, by the name of its column with the peers. */
export function columnsOf({
  counts,
  day,
  night,
  all,
  whole,
  dip,
  surge,
  load,
  cosinor,
  spread,
  stiffness,
  ...result
}) {
  const out = { n_day: counts.day, n_night: counts.night, longest_gap: result.longestGapHours };
  const periods = { day, night, all };
  for (const m of MEASURES) {
    out[`${m}_day`] = day.mean[m];
    out[`${m}_night`] = night.mean[m];
    out[`${m}_sd_day`] = day.sd[m];
    out[`${m}_sd_night`] = night.sd[m];
    out[`${m}_mean`] = whole.arithmetic[m];
    out[`${m}_sd`] = all.sd[m];
    out[`${m}_cv`] = result.cvPercent[m];
    out[`${m}_trapezoid`] = whole.trapezoid[m];
    out[`${m}_weighted`] = whole.hoursWeighted[m];
    out[`${m}_arv`] = result.arv[m];
    out[`${m}_arvt`] = result.arvTimeWeighted[m];
    out[`${m}_wsd`] = result.weightedSd[m];
    out[`${m}_closed`] = whole.closed[m];
    out[`${m}_hourly`] = whole.hourly[m];
    out[`${m}_arv_without_gaps`] = result.arvWithoutGaps[m];
    out[`${m}_arv_day`] = result.arvDay[m];
    out[`${m}_arv_night`] = result.arvNight[m];
    out[`${m}_sd_by_n`] = spread.populationSd[m];
    out[`${m}_rmssd`] = spread.rmssd[m];
    out[`${m}_sd_about_trend`] = spread.sdAboutTrend[m];
    out[`${m}_range`] = spread.mostMinusLeast[m];
    out[`${m}_peak`] = spread.mostMinusMean[m];
    out[`${m}_trough`] = spread.meanMinusLeast[m];
    for (const [name, period] of Object.entries(periods)) {
      out[`${m}_least_${name}`] = period.least[m];
      out[`${m}_most_${name}`] = period.most[m];
    }
    for (const [which, fit] of Object.entries(cosinor[m])) {
      for (const key of ['mesor', 'r2', 'sse', 'f', 'p']) out[`${m}_${which}_${key}`] = fit[key];
      out[`${m}_${which}_mesor_se`] = fit.mesorSe;
      for (const [j, one] of fit.harmonics.entries()) {
        const name = `${m}_${which}_${j + 1}`;
        Object.assign(out, { [`${name}_beta`]: one.beta, [`${name}_gamma`]: one.gamma });
        Object.assign(out, { [`${name}_amplitude`]: one.amplitude, [`${name}_peak`]: one.peakHour });
        Object.assign(out, {
          [`${name}_amplitude_se`]: one.amplitudeSe,
          [`${name}_peak_se`]: one.peakHourSe,
        });
      }
    }
  }
  for (const [name, period] of Object.entries(periods)) {
    out[`pulse_pressure_${name}`] = period.pulsePressure;
    out[`mean_arterial_${name}`] = period.meanArterial;
    out[`double_product_${name}`] = period.doubleProduct;
  }
  for (const m of PRESSURES) {
    out[`${m}_dip`] = dip[`${m}Percent`];
    for (const period of ['day', 'night']) {
      out[`${m}_load_${period}`] = load[period].percent[m];
      out[`${m}_time_load_${period}`] = load[period].timePercent[m];
      out[`${m}_area_${period}`] = load[period].excessArea[m];
    }
  }
  out.surge_trough = surge.sleepTrough;
  out.surge_waking = surge.preWaking;
  out.evening_fall = surge.eveningFall;
  out.surge_rising = surge.rising;
  out.surge_moving = surge.movingTrough;
  out.surge_four = surge.fourReadings;
  out.surge_rate = surge.ratePerHour;
  for (const key of ['slope', 'intercept', 'r', 'index', 'symmetric', 'bisectorSlope']) out[`stiffness_${key}`] = stiffness?.[key] ?? null; // biome-ignore format: one thought
  return out;
}

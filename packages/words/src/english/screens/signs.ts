/** The signs that are neither counted nor taken with a cuff, as a chart writes them. */
export const signs = {
  temperatureIs: (f: { celsius: string; site: string }) => `${f.celsius} °C, ${f.site}`,
  onAirIs: (f: { percent: string }) => `${f.percent} % on air`,
  onOxygenIs: (f: { percent: string }) => `${f.percent} % on oxygen`,
  painIs: (f: { score: string }) => `${f.score} of 10`,
  weightIs: (f: { kg: string; how: string }) => `${f.kg} kg, ${f.how}`,
  heightIs: (f: { cm: string; how: string }) => `${f.cm} cm, ${f.how}`,
} as const;

import type { ChartedSeries } from '@evenfall/record';

/** The devices that a person's series name, those of the newest first, each once: one device is best written one way. */
export function devicesNamed(series: readonly Pick<ChartedSeries, 'content'>[]): string[] {
  return [
    ...new Set(series.flatMap(({ content }) => content.readings.flatMap(({ device }) => device ?? []))),
  ];
}

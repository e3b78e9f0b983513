import type { Person } from '@evenfall/physiology';

/** The same person without any variation from beat to beat: pressure, interval and loudness are the same on every beat. */
export function still(person: Person): Person {
  return {
    ...person,
    breathingSwingMmHg: 0,
    slowWaveMmHg: 0,
    slowSdMmHg: 0,
    beatSdMmHg: 0,
    beatDiastolicSdMmHg: 0,
    soundSdDb: 0,
    heart: { breathSeconds: 0, slowSeconds: 0, driftSeconds: 0, independentSeconds: 0 },
    alerting: { ...person.alerting, sittingMmHg: 0, firstReadingMmHg: 0, whiteCoatMmHg: 0 },
  };
}

/** How far a scenario may go: least and most, both taken. Decisions of this project; wider than any person of the book. */
export const SCENARIO_LIMITS = {
  ageYears: [1, 110],
  systolic: [50, 260],
  diastolic: [25, 160],
  ratePerMinute: [25, 200],
  ectopicsPerMinute: [0, 30],
  coupling: [0.4, 0.85],
  alternansMmHg: [1, 40],
  breathsPerMinute: [4, 60],
  cycleSeconds: [25, 100],
  chance: [0, 1],
  soundsToMmHg: [0, 60],
  soundDb: [0, 60],
  armCm: [10, 60],
  alertingMmHg: [0, 60],
  temperatureC: [30, 43],
  noiseDbA: [20, 100],
  zeroOffsetMmHg: [-20, 20],
  leakMmHgPerMinute: [0, 60],
  acceptedWithinMmHg: [1, 30],
  /** A diastolic is at least this far under the systolic. */
  leastPulsePressure: 8,
} as const;

/** Limits that a diary tells a person to act at: mmHg, each the least number at which something is done. */
export type DiaryLimits = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly pregnantSystolic: number;
  readonly pregnantDiastolic: number;
  readonly weeksAfterBirth: number;
};

/**
 * Everything that stands on a printed diary, in one language: plain words for the person who measures. Numbers are
 * written as the device at home shows them. Source of what is asked: bedside handbook 3.1 and 3.16, out-of-office
 * handbook 2; worded anew.
 */
export type DiaryText = {
  readonly name: string;
  readonly locale: string;
  readonly direction: 'ltr' | 'rtl';
  /** Whether a clinician who speaks the language has looked at it. */
  readonly isReviewed: boolean;
  readonly notReviewed: string;
  readonly title: string;
  readonly whose: (name: string) => string;
  /** Before the date of birth, the person's number, and the device with its cuff. */
  readonly born: string;
  readonly number: string;
  readonly device: string;
  readonly plan: (days: number, readings: number) => string;
  readonly bringBack: (day: string) => string;
  readonly howTitle: string;
  readonly before: (minutes: number) => string;
  readonly rest: (minutes: number) => string;
  readonly cuff: string;
  readonly arm: string;
  readonly left: string;
  readonly right: string;
  readonly quiet: string;
  readonly times: (readings: number) => string;
  readonly write: string;
  readonly dangerTitle: string;
  readonly severe: (limits: DiaryLimits) => string;
  readonly again: (minutes: number) => string;
  readonly symptoms: string;
  readonly pregnant: (limits: DiaryLimits) => string;
  readonly ownAdvice: string;
  readonly clinicPhone: string;
  readonly emergencyPhone: string;
  readonly day: string;
  readonly morning: string;
  readonly evening: string;
  readonly time: string;
  readonly reading: (number: number) => string;
  readonly upper: string;
  readonly lower: string;
  readonly pulse: string;
  readonly notes: string;
  readonly table: string;
};

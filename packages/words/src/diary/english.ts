import type { DiaryText } from './diaryText.js';

/** The diary in English. */
export const english: DiaryText = {
  name: 'English',
  locale: 'en-GB',
  direction: 'ltr',
  isReviewed: true,
  notReviewed: 'Translation not clinically reviewed.',
  title: 'My blood pressure at home',
  whose: (name) => `Diary of ${name}`,
  born: 'Date of birth:',
  number: 'Number:',
  device: 'Device and cuff:',
  plan: (days, readings) =>
    `Measure every morning and every evening for ${days === 1 ? '1 day' : `${days} days`}, ${readings === 1 ? 'once' : readings === 2 ? 'twice' : `${readings} times`} each time.`,
  bringBack: (day) => `Please bring this diary back on ${day}, or as soon as you can after that.`,
  howTitle: 'How to measure',
  before: (minutes) =>
    `For ${minutes} minutes before: no coffee, tea or cola, no tobacco, no exercise. Go to the toilet first.`,
  rest: (minutes) =>
    `Sit quietly for ${minutes} minutes: back against the chair, both feet flat on the floor, legs not crossed.`,
  cuff: 'Put the cuff on your bare upper arm, and lay the arm on the table at the height of your heart.',
  arm: 'Always use the same arm:',
  left: 'left',
  right: 'right',
  quiet: 'Do not talk or move while the device measures.',
  times: (readings) =>
    readings === 1
      ? 'In the morning measure before your medicines and before breakfast; in the evening before you go to bed.'
      : 'Wait one minute between readings. In the morning measure before your medicines and before breakfast; in the evening before you go to bed.',
  write:
    'Write down every reading at once, as the device shows it, also one that looks wrong. Leave none out.',
  dangerTitle: 'When to get help',
  severe: ({ systolic, diastolic }) =>
    `If the upper number is ${systolic} or more, or the lower number is ${diastolic} or more:`,
  again: (minutes) =>
    `Sit quietly for ${minutes} minutes and measure again. If it is still that high, call your clinic today.`,
  symptoms:
    'Call the emergency number at once if you also have pain in the chest or back, breathlessness, weakness or numbness, trouble speaking or seeing, a severe headache, confusion, a fit, or pass very little urine. Do not wait and do not measure again.',
  pregnant: ({ pregnantSystolic, pregnantDiastolic, weeksAfterBirth }) =>
    `If you are pregnant, or gave birth in the last ${weeksAfterBirth} weeks: call at once at ${pregnantSystolic} or more, or ${pregnantDiastolic} or more.`,
  ownAdvice: 'If your clinic told you something else, do what your clinic told you.',
  clinicPhone: 'Clinic:',
  emergencyPhone: 'Emergency:',
  day: 'Day',
  morning: 'Morning',
  evening: 'Evening',
  time: 'Time',
  reading: (number) => `Reading ${number}`,
  upper: 'Upper',
  lower: 'Lower',
  pulse: 'Pulse',
  notes: 'Medicines, symptoms',
  table: 'My readings',
};

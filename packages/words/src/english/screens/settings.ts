type Text = { text: string };

/** How this device writes: its language, dates, times and units. */
export const settings = {
  title: 'Preferences',
  lead: 'For this device, whoever uses it. Nothing in the charts changes by it.',
  language: 'Language',
  asBrowser: (f: Text) => `as the browser has it (${f.text})`,
  notReviewed: (f: Text) => `${f.text}: this translation is not clinically reviewed.`,
  dates: 'Dates',
  asLanguage: (f: Text) => `as the language has it (${f.text})`,
  hours: 'Time of day',
  temperature: 'Temperature',
  length: 'Lengths',
  mass: 'Weight',
  Cel: '°C',
  '[degF]': '°F',
  cm: 'cm',
  '[in_i]': 'in',
  kg: 'kg',
  '[lb_av]': 'lb',
  paper: 'Paper for files to print',
  a4: 'A4',
  letter: 'US Letter',
  notKept: 'This browser keeps nothing between visits: your choice holds until the page is closed.',
} as const;

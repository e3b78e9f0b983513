/** What each guideline is called as a whole, where it has a set of rules in more than one section. */
export const guidelineTitles = {
  guideline: {
    'acc-aha-2017': 'ACC/AHA 2017',
    'acc-aha-2025': 'AHA/ACC 2025',
    'esc-2024': 'ESC 2024',
    'esc-esh-2018': 'ESC/ESH 2018',
    'esh-2023': 'ESH 2023',
    'ish-2020': 'ISH 2020',
    'nice-ng136': 'NICE NG136',
    'jsh-2019': 'JSH 2019',
    'who-2021': 'WHO 2021',
    'aha-2005': 'AHA 2005',
    'hypertension-canada': 'Hypertension Canada',
    'australia-2016': 'Australia 2016',
    'taiwan-2022': 'Taiwan 2022',
  },
} as const;

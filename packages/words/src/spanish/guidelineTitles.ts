import type { guidelineTitles as english } from '../english/guidelineTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/guidelineTitles`. */
export const guidelineTitles: Reworded<typeof english> = {
  guideline: {
    'acc-aha-2017': 'ACC/AHA 2017',
    'acc-aha-2025': 'AHA/ACC 2025',
    'esc-2024': 'ESC 2024',
    'esc-esh-2018': 'ESC/ESH 2018',
    'esh-2023': 'ESH 2023',
    'ish-2020': 'ISH 2020',
    'nice-ng136': 'NICE NG136',
    'jsh-2019': 'JSH 2019',
    'who-2021': 'OMS 2021',
    'aha-2005': 'AHA 2005',
    'hypertension-canada': 'Hypertension Canada',
    'australia-2016': 'Australia 2016',
    'taiwan-2022': 'Taiwán 2022',
  },
};

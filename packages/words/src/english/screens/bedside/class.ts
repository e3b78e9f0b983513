import type { Say } from '../../../say.js';

const YEARS = { one: 'year', other: 'years' };

type Text = { text: string };

/** What the bedside says of it; the rest is in `../class.ts` and comes later. */
export const classBook = {
  band: 'CLASS: practice among learners, in no chart',
  pageTitle: (f: Text) => `CLASS · ${f.text} · Evenfall`,
  pageTitleInvented: (f: Text) => `INVENTED · CLASS · ${f.text} · Evenfall`,
  link: 'Class: practice among learners',
  refusing: 'Refusing needs no reason, and nothing is written down.',
  pseudonym: 'Pseudonym',
  years: (f: { years: number }, say: Say) => say.counted(f.years, YEARS),
  checkTitle: 'Is this them, and do they agree?',
  checkAsk: 'Ask them to say their pseudonym, and whether they agree to be measured now.',
  agrees: 'It is them, and they agree',
  refuses: 'They refuse, or it is somebody else',
  incidental:
    'An incidental finding: the teacher tells it to the person privately, and helps them to get it looked at.',
  actNowSays:
    'Do not wait for this page. After signing, say with the round whom you told and what was said back.',
  rounds: 'Rounds',
  signHint:
    'What is signed is kept in this session and in no chart. It is deleted when the session is ended.',
} as const;

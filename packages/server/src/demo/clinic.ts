import { WEEK_AFTER, WEEK_BEFORE } from './awaySeries.js';
import type { InventedPerson } from './invented.js';
import { WHOLE_ROUNDS } from './wholeRounds.js';

export const INVENTED_PEOPLE: readonly InventedPerson[] = [
  {
    identity: { name: 'Orla Wickstead', birthDate: '1957-03-14', number: 'INV-0001' },
    rounds: [
      {
        hoursAgo: 26,
        agent: 'learner',
        pulse: { n: 27, windowSeconds: 15, rhythmFelt: 'irregular' },
        breaths: { n: 18, windowSeconds: 60 },
      },
      {
        hoursAgo: 25.9,
        agent: 'sister',
        pulse: { rhythm: 'no-pattern', meanMs: 640, beats: 72 },
        breaths: { n: 19, windowSeconds: 60 },
      },
    ],
  },
  {
    identity: { name: 'Bram Oyelaran', birthDate: '1988-11-02', number: 'INV-0002' },
    rounds: [
      {
        hoursAgo: 50,
        agent: 'doctor',
        pulse: { n: 12, windowSeconds: 15, rhythmFelt: 'regular' },
        breaths: { n: 12, windowSeconds: 60 },
      },
      {
        hoursAgo: 3,
        agent: 'doctor',
        pulse: { rhythm: 'breathing', meanMs: 1180, beats: 50 },
        breaths: { n: 13, windowSeconds: 60 },
      },
    ],
  },
  {
    identity: { name: 'Pia Lindqvist', birthDate: '2022-05-30', number: 'INV-0003' },
    rounds: [
      {
        hoursAgo: 5,
        agent: 'sister',
        pulse: { n: 104, windowSeconds: 60 },
        breaths: { n: 26, windowSeconds: 60 },
      },
    ],
  },
  {
    identity: { name: 'Tomas Varga', birthDate: '1941-08-19', number: 'INV-0004' },
    rounds: [
      {
        hoursAgo: 8,
        agent: 'learner',
        pulse: { n: 63, windowSeconds: 30, clock: 'beat', first: 0 },
        breaths: { n: 17, windowSeconds: 60 },
        amended: [{ agent: 'learner', n: 36, reason: 'typing-slip' }],
      },
      {
        hoursAgo: 2,
        agent: 'sister',
        pulse: { n: 44, windowSeconds: 30 },
        breaths: { notDone: 'asleep' },
        amended: [{ agent: 'sister', inError: 'wrong-person' }],
      },
      {
        hoursAgo: 1.5,
        agent: 'sister',
        pulse: { rhythm: 'steady', meanMs: 826, beats: 40 },
        breaths: { n: 16, windowSeconds: 60 },
      },
    ],
  },
  {
    identity: { name: 'Edda Rook (invented)', birthDate: '1969-01-07', number: null },
    rounds: [
      {
        hoursAgo: 4,
        agent: 'doctor',
        pulse: { n: 56, windowSeconds: 60, strength: 'weak' },
        breaths: { notDone: 'declined' },
        amended: [
          { agent: 'doctor', n: 65, reason: 'typing-slip' },
          { agent: 'sister', n: 58, reason: 'typing-slip' },
        ],
      },
    ],
  },
  ...WHOLE_ROUNDS,
  {
    identity: { name: 'Mira Tolland', birthDate: '1966-05-08', number: 'INV-0014' },
    facts: [{ daysAgo: 400, about: { fact: 'reference-sex', sex: 'f' } }],
    rounds: [],
    away: [
      { of: 'home', daysAgo: 75, treated: false, days: WEEK_BEFORE },
      { of: 'ambulatory', daysAgo: 20, treated: true },
      { of: 'home', daysAgo: 16, treated: true, days: WEEK_AFTER },
    ],
    diary: { daysAgo: 8, days: 7, language: 'en' },
  },
  { identity: { name: 'Juno Castellane', birthDate: null, number: 'INV-0006' }, rounds: [] },
];

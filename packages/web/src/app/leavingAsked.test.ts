import { expect, test } from 'vitest';
import { leavesBy } from './leavingAsked.js';

const HERE = { origin: 'http://127.0.0.1:4444', pathname: '/people/a/away/b' };
const LINK = { href: '/people/a', target: '', isDownload: false, isElsewhere: false };

test.each([
  ['a link to another page', LINK, '/people/a'],
  ['with its search and place', { ...LINK, href: '/people?q=x#y' }, '/people?q=x#y'],
  ['a place on the same page', { ...LINK, href: '#main' }, null],
  ['a file that is saved', { ...LINK, isDownload: true }, null],
  ['another window', { ...LINK, target: '_blank' }, null],
  ['a key held for another window', { ...LINK, isElsewhere: true }, null],
  ['another site, which closes the page', { ...LINK, href: 'https://example.org/' }, null],
  ['no link', { ...LINK, href: null }, null],
])('%s', (_name, touched, leadsTo) => {
  expect(leavesBy(touched, HERE)).toBe(leadsTo);
});

/**
 * Why a server gives no answer: by the code of its reason, and, where it has none, by the status of HTTP. The server says
 * it in English beside the code; a screen says it in its own language.
 */
export const answers = {
  '400': 'The request could not be read',
  '401': 'Sign in first',
  '403': 'This request is refused',
  '404': 'Not found',
  '405': 'Method not allowed',
  '409': 'Already kept with other content',
  '413': 'Too large',
  '415': 'JSON is expected',
  '422': 'Some values were refused',
  '429': 'Too often',
  '500': 'Evenfall failed',
  '503': 'Not ready',
  other: 'Refused',
  'not-json': 'The body is not JSON that can be read.',
  'not-of-role': 'This account may not do that.',
  'other-address': 'This server answers only to its own address.',
  'other-page': 'This server answers only to its own pages.',
  'backup-expected': 'A backup is expected.',
  'database-away': 'The database cannot be reached just now. Nothing of this was kept: send it again.',
} as const;

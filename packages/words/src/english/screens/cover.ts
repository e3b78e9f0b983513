/** A blank sheet over a round, so that nobody beside it reads it. */
export const cover = {
  cover: 'Cover',
  comeBack: 'Covered. Touch, or press any key, to come back.',
} as const;

/** What is shown to one learner or to a whole room, what the room says of its sound and keys. */
export const showing = {
  stoppedSound: 'Stopped: the sound was taken away, by a call perhaps.',
  goOnWithSound: 'Go on with sound',
  letterKeys: 'Keys that are single letters, in the room only',
} as const;

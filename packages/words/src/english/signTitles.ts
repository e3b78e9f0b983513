/** What the choices of the other signs are called on a screen. Glasgow scale: bedside handbook 4.3. */
export const signTitles = {
  probe: { finger: 'finger', toe: 'toe', ear: 'ear', forehead: 'forehead', other: 'elsewhere' },
  eyes: { '4': 'open by themselves', '3': 'open to sound', '2': 'open to pressure', '1': 'do not open' },
  verbal: { '5': 'oriented', '4': 'confused', '3': 'words', '2': 'sounds', '1': 'none' },
  motor: {
    '6': 'obeys',
    '5': 'localises',
    '4': 'normal flexion',
    '3': 'abnormal flexion',
    '2': 'extension',
    '1': 'none',
  },
} as const;

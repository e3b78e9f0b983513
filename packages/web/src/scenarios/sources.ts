/** Addresses of a new one that begins from nobody, and from a file that was opened on this device. */
export const FROM_BLANK = 'blank';
export const FROM_FILE = 'file';

/** The form of one on this device, by where it begins. */
export function formFrom(source: string): string {
  return `scenario ${source}`;
}

/** Where a key was pressed, as far as it matters whose it is. */
export type KeyPlace = {
  /** Within the part of the page whose keys they are. */
  readonly isInside: boolean;
  /** On a control that has a use for space and enter itself, and whether it is a button. */
  readonly control: 'none' | 'button' | 'other';
  /** In a field where letters are written. */
  readonly isWriting: boolean;
  readonly hasLetters: boolean;
};

/**
 * Whether a key is one of the room's. Space, arrows and Home work wherever the focus is but on a control that has a use
 * for them; a single letter only with the focus in the room itself, and not at all where letters are turned off.
 * Source: WCAG 2.2, 2.1.4 (character key shortcuts).
 */
export function isKeyWanted(key: string, { isInside, control, isWriting, hasLetters }: KeyPlace): boolean {
  if (isWriting) return false;
  const isArrow = key.startsWith('Arrow');
  if (control !== 'none' && (key === ' ' || key === 'Enter' || isArrow))
    return isArrow && control === 'button';
  return key === ' ' || key.length > 1 || (isInside && hasLetters);
}

/** What has the focus: its tag, the type of an input, its role. */
export type Focused = { readonly tag: string; readonly type: string | null; readonly role: string | null };

/** Whether letters are typed there: into a field, or to find an option of a list by its first letters. */
export function takesLetters({ tag, type, role }: Focused): boolean {
  if (tag === 'INPUT') return type !== 'radio' && type !== 'checkbox';
  return (
    tag === 'SELECT' || tag === 'TEXTAREA' || role === 'combobox' || role === 'listbox' || role === 'textbox'
  );
}

/** The name of the form of a round's other signs, in the store. */
export function signsForm(round: string): string {
  return `signs ${round}`;
}

/** The exercise that was last under way on this page; another one was begun before the page was loaded. */
let ofThisPage: string | null = null;

export function isOfThisPage(exercise: string): boolean {
  return ofThisPage === exercise;
}

export function nowOfThisPage(exercise: string): void {
  ofThisPage = exercise;
}

/** What a preparation card says, in the language of whoever is to be measured. Source: bedside handbook 3.1. */
export type CardText = {
  /** What the language calls itself. */
  readonly name: string;
  /** A BCP 47 tag, for dates, numbers and the page's own mark of language. */
  readonly locale: string;
  readonly direction: 'ltr' | 'rtl';
  readonly heading: string;
  readonly before: (minutes: number) => string;
  readonly toilet: string;
  readonly rest: (minutes: number) => string;
  readonly back: string;
  readonly feet: string;
  readonly bare: string;
  readonly arm: string;
  readonly quiet: string;
  readonly tell: string;
  /** After whom the times are. */
  readonly source: (work: string) => string;
  /** That no clinician has reviewed the words; null where one has. */
  readonly notReviewed: string | null;
};

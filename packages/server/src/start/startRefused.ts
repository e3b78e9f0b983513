/** Thrown when a server must not start; the message catalogue makes the sentence from code and figures. */
export class StartRefused extends Error {
  override readonly name = 'StartRefused';
  /** `port-in-use`: figures.port. `site-other-purpose`: invented people and a real clinic would share a record. */
  readonly code: 'port-in-use' | 'site-other-purpose';
  readonly field: string;
  readonly figures: Readonly<Record<string, number>>;

  constructor(code: StartRefused['code'], field: string, figures: Readonly<Record<string, number>> = {}) {
    super(`${code} ${JSON.stringify(figures)}`);
    this.code = code;
    this.field = field;
    this.figures = figures;
  }
}

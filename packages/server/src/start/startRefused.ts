/** Thrown when a server must not start; the message catalogue makes the sentence from code and figures. */
export class StartRefused extends Error {
  override readonly name = 'StartRefused';
  /** `port-in-use`: figures.port. `certificate-unreadable`: names.reason. `host-unknown`: got. `site-other-purpose`: invented people and a real clinic would share a record. */
  readonly code:
    | 'port-in-use'
    | 'site-other-purpose'
    | 'lan-owner-needed'
    | 'lan-no-folder'
    | 'lan-no-address'
    | 'host-unknown'
    | 'certificate-unreadable';
  readonly field: string;
  readonly figures: Readonly<Record<string, number>>;

  /** What the sentence may quote: `reason`. */
  readonly names: Readonly<Record<string, string>>;
  /** What was typed. */
  readonly got: string | null;

  constructor(
    code: StartRefused['code'],
    field: string,
    figures: Readonly<Record<string, number>> = {},
    { names = {}, got = null }: { names?: Readonly<Record<string, string>>; got?: string | null } = {},
  ) {
    super(`${code} ${JSON.stringify(figures)}`);
    this.code = code;
    this.field = field;
    this.figures = figures;
    this.names = names;
    this.got = got;
  }
}

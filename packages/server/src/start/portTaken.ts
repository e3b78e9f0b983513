/** Thrown when another program listens on the port already. */
export class PortTaken extends Error {
  override readonly name = 'PortTaken';
  readonly port: number;

  constructor(port: number) {
    super(`port ${port} is taken`);
    this.port = port;
  }
}

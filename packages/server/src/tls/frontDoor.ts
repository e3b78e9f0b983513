import type { Server as PlainServer } from 'node:http';
import type { Server as TlsServer } from 'node:https';
import { createServer, type Server, type Socket } from 'node:net';

/** The first byte of a TLS handshake. Source: RFC 8446, section 5.1. */
const HANDSHAKE = 0x16;
/** How long a caller may say nothing. Source: decision of this project. */
const SILENCE_MS = 10_000;
/** How long requests under way may take when the server stops; all acknowledged is kept already. */
const LAST_WORDS_MS = 1_000;

/** The port, and the way to close it. */
export type FrontDoor = { readonly door: Server; close(): Promise<void> };

/**
 * One port for both: whoever begins a TLS handshake gets the app, whoever speaks plain HTTP gets what `plain` chooses
 * for where they call from. So an address typed without `https://` explains itself instead of failing.
 */
export function frontDoor(tls: TlsServer, plain: (isLoopback: boolean) => PlainServer): FrontDoor {
  const sockets = new Set<Socket>();
  const door = createServer((socket) => {
    sockets.add(socket);
    socket.once('close', () => sockets.delete(socket));
    socket.on('error', () => socket.destroy());
    socket.setTimeout(SILENCE_MS, () => socket.destroy());
    socket.once('data', (first) => {
      socket.pause();
      socket.setTimeout(0);
      socket.removeAllListeners('timeout');
      socket.unshift(first);
      const isTls = typeof first !== 'string' && first[0] === HANDSHAKE;
      const server = isTls ? tls : plain(isLoopback(socket));
      server.emit('connection', socket);
      if (!isTls) process.nextTick(() => socket.resume());
    });
  });
  return {
    door,
    close: async () => {
      const ended = new Promise((resolve) => door.close(resolve));
      for (const server of [tls, plain(true), plain(false)]) server.closeIdleConnections();
      const late = setTimeout(() => {
        for (const socket of sockets) socket.destroy();
      }, LAST_WORDS_MS);
      await ended;
      clearTimeout(late);
    },
  };
}

function isLoopback({ remoteAddress = '' }: Socket): boolean {
  return /^(::ffff:)?127\.|^::1$/.test(remoteAddress);
}

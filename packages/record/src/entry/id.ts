import { z } from 'zod';

/**
 * An id made by a client: UUIDv7 (RFC 9562). Its hex digits may come in either case and are one id; it is kept in
 * lower case, as a database gives it back. Never read as a time.
 */
export const id = z.uuidv7().toLowerCase();

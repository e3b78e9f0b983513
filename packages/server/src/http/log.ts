import { createMiddleware } from 'hono/factory';
import { routePath } from 'hono/route';

/** One finished request. It holds the route's pattern, never a path: no name, number or id of anybody. */
export type RequestLine = {
  readonly method: string;
  readonly route: string;
  readonly status: number;
  readonly milliseconds: number;
};

/** Tells `log` of each request once it is answered. `now` is in milliseconds. */
export function requestLog(log: (line: RequestLine) => void, now: () => number) {
  return createMiddleware(async (c, next) => {
    const began = now();
    await next();
    log({
      method: c.req.method,
      route: routePath(c, -1),
      status: c.res.status,
      milliseconds: Math.round((now() - began) * 10) / 10,
    });
  });
}

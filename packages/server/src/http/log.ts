import { createMiddleware } from 'hono/factory';
import { matchedRoutes } from 'hono/route';

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
      route: routeOf(matchedRoutes(c).map(({ path }) => path)),
      status: c.res.status,
      milliseconds: Math.round((now() - began) * 10) / 10,
    });
  });
}

/** The most exact pattern that matched; middleware matches by wildcard. */
function routeOf(patterns: readonly string[]): string {
  return patterns.findLast((pattern) => !pattern.includes('*')) ?? '*';
}

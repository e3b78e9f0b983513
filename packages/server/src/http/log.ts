import { createMiddleware } from 'hono/factory';
import { matchedRoutes } from 'hono/route';
import type { Deleted } from '../store/endClassSession.js';
import type { AccountLine } from './accountLog.js';

/** One finished request. It holds the route's pattern, never a path: no name, number or id of anybody. */
export type RequestLine = {
  readonly method: string;
  readonly route: string;
  readonly status: number;
  readonly milliseconds: number;
};

/** A class session that was ended: how much of it is gone and of how many people something stays, and no id of any. */
export type ClassEndedLine = {
  readonly event: 'class-session-ended';
  /** The server ends what nobody ended in time. */
  readonly by: 'teacher' | 'server';
  readonly persons: number;
  readonly rounds: number;
  readonly entries: number;
  readonly personsKept: number;
};

export type LogLine = RequestLine | ClassEndedLine | AccountLine;

/** All that the log says of an ended class session. */
export function classEnded(by: ClassEndedLine['by'], { deleted, kept }: Deleted): ClassEndedLine {
  return { event: 'class-session-ended', by, ...deleted, personsKept: kept.persons };
}

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

import { useApp } from '../app/context.js';
import type { Second } from './useSecond.js';

/** The code by which another device joins, and whether one has. */
export function SecondCode({ second, anew }: { readonly second: Second; readonly anew: () => void }) {
  const { words } = useApp();
  if (second.is !== 'open')
    return (
      <div className="second-code">
        <p role="status">{second.is === 'off' ? null : words.sentence(`second.${second.is}`)}</p>
        {second.is === 'over' ? (
          <button type="button" className="button" onClick={anew}>
            {words.sentence('second.anew')}
          </button>
        ) : null}
      </div>
    );
  const { marking, isJoined } = second;
  const { code, picture, secondsLeft } = marking;
  return (
    <div className="second-code">
      {isJoined ? null : (
        <>
          <p className="small soft">{words.sentence('second.code')}</p>
          <p className="second-code-letters">{`${code.slice(0, 3)} ${code.slice(3)}`}</p>
          {picture === null ? null : (
            <svg
              className="second-picture"
              viewBox={`0 0 ${picture.size} ${picture.size}`}
              role="img"
              aria-label={words.sentence('second.picture')}
              shapeRendering="crispEdges"
            >
              <rect width={picture.size} height={picture.size} fill="#fff" />
              <path d={picture.path} fill="#000" />
            </svg>
          )}
          <p className="small">{words.sentence('second.how', { minutes: Math.round(secondsLeft / 60) })}</p>
        </>
      )}
      <p role="status" className={isJoined ? 'second-ready' : 'small'}>
        {words.sentence(
          isJoined
            ? second.silent === null
              ? 'second.joined'
              : `second.${second.silent}`
            : 'second.waiting',
        )}
      </p>
    </div>
  );
}

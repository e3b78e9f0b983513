import type { Problem } from '@evenfall/api';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';

type RefusedRowsProps = {
  readonly problems: readonly Problem[];
  /** What the list is called; of refused rows if absent. */
  readonly label?: string;
};

/** What was refused of a file, or is asked of it: where it stands, what was expected there and what came. */
export function RefusedRows({ problems, label }: RefusedRowsProps) {
  const { words } = useApp();
  if (problems.length === 0) return null;
  const isTable = problems.some(({ line }) => line !== null);
  return (
    <Scrolling label={label ?? words.sentence('away.refused')}>
      <table className="bring-refused">
        <thead>
          <tr>
            {isTable ? <th scope="col">{words.sentence('bring.line')}</th> : null}
            <th scope="col">{words.sentence(isTable ? 'bring.column' : 'bring.place')}</th>
            <th scope="col">{words.sentence('bring.expected')}</th>
            <th scope="col">{words.sentence('bring.came')}</th>
          </tr>
        </thead>
        <tbody>
          {problems.map((problem, at) => {
            const { line, column, field, got } = problem;
            const { expected, message } = words.sentProblem(problem);
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the list of one answer never changes
              <tr key={at}>
                {isTable ? <th scope="row">{line === null ? '' : words.say.short(line)}</th> : null}
                <td>
                  {field ?? ''}
                  {column === null ? '' : ` (${words.say.short(column)})`}
                </td>
                <td>{expected ?? message}</td>
                <td>{got ?? words.sentence('bring.nothingCame')}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scrolling>
  );
}

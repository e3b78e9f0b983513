import type { Refusal } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { elementOf, severalIn, textOfSeveral } from './scenarioDraft.js';
import type { Choice } from './scenarioFields.js';

type SeveralProps = {
  readonly path: string;
  readonly choices: readonly Choice[];
  readonly text: string;
  readonly wrong: readonly Refusal[];
  readonly set: (text: string) => void;
};

/** Several of a list in order, a field for each and one more for the next; what is taken back closes up. */
export function SeveralShown({ path, choices, text, wrong, set }: SeveralProps) {
  const { words } = useApp();
  const chosen = severalIn(text);
  const put = (at: number, id: string) =>
    set(textOfSeveral([...chosen.slice(0, at), id, ...chosen.slice(at + 1)].filter(Boolean)));
  const places = chosen.length < choices.length ? [...chosen, ''] : chosen;
  return places.map((id, at) => {
    const label = words.sentence('scenarioForm.reportAt', { at: at + 1 });
    const here = wrong.filter(({ field }) => field === `/${path}/${at}`);
    const said = here.map((one) => words.problem(one, { nameOf: () => label }).message).join(' ');
    const its = choices.find((one) => one.id === id);
    const isOffered = (one: Choice) => one.id === id || !chosen.includes(one.id);
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a place in the order is what it is
      <div key={at} className="scenario-whole" id={elementOf(`${path}/${at}`)}>
        <Field label={label} wrong={said === '' ? null : said}>
          {(control) => (
            <select {...control} value={id} onChange={({ target }) => put(at, target.value)}>
              <option value="">{words.sentence('scenarioForm.reportNoMore')}</option>
              {choices.filter(isOffered).map((one) => (
                <option key={one.id} value={one.id}>
                  {words.sentence(one.says as 'counts.report-gap')}
                </option>
              ))}
            </select>
          )}
        </Field>
        {/* A narrow field cuts what was chosen: it is read whole below it. */}
        {its === undefined ? null : (
          <p className="scenario-chosen small" aria-hidden="true">
            {words.sentence(its.says as 'counts.report-gap')}
          </p>
        )}
      </div>
    );
  });
}

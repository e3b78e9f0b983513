import { ACCOUNT_ROLES, type AccountRole } from '@evenfall/record';
import { useApp } from '../app/context.js';

const MAY = {
  owner: 'signIn.mayOwner',
  clinician: 'signIn.mayClinician',
  supervisor: 'signIn.maySupervisor',
  learner: 'signIn.mayLearner',
} as const satisfies Record<AccountRole, string>;

type RoleTicksProps = {
  readonly roles: readonly AccountRole[];
  readonly onChange: (roles: readonly AccountRole[]) => void;
  readonly wrong: string | null;
};

/** What an account may do, a tick for each. */
export function RoleTicks({ roles, onChange, wrong }: RoleTicksProps) {
  const { words } = useApp();
  return (
    <fieldset className="ticks">
      <legend>{words.sentence('signIn.mayDo')}</legend>
      {ACCOUNT_ROLES.map((role) => (
        <label key={role} className="tick">
          <input
            type="checkbox"
            checked={roles.includes(role)}
            onChange={({ target }) =>
              onChange(target.checked ? [...roles, role] : roles.filter((one) => one !== role))
            }
          />
          <span>{words.sentence(MAY[role])}</span>
        </label>
      ))}
      {wrong === null ? null : <p className="field-wrong">{wrong}</p>}
    </fieldset>
  );
}

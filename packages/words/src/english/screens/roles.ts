/** What an agent is in one act: the role, or who took it where a role is shared. */
export const roles = {
  observer: 'observer',
  clinician: 'clinician',
  learner: 'learner',
  owner: 'owner',
  supervisor: 'supervisor',
  teacher: 'teacher',
  assessor: 'assessor',
  importer: 'importer',
} as const;

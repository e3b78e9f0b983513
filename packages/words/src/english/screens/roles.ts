/** What an agent is in one act. */
export const roles = {
  observer: 'observer',
  supervisor: 'supervisor',
  teacher: 'teacher',
  assessor: 'assessor',
  importer: 'importer',
} as const;

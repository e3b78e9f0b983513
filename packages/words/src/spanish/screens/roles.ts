import type { roles as english } from '../../english/screens/roles.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/roles`. */
export const roles: Reworded<typeof english> = {
  observer: 'observador/a',
  clinician: 'profesional clínico/a',
  learner: 'en aprendizaje',
  owner: 'titular',
  supervisor: 'supervisor/a',
  teacher: 'docente',
  assessor: 'evaluador/a',
  importer: 'importador/a',
};

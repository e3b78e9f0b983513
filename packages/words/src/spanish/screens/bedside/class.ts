import type { classBook as english } from '../../../english/screens/bedside/class.js';
import type { Reworded } from '../../../reworded.js';

const YEARS = { one: 'año', other: 'años' };

/** What the bedside says of it; the rest is in `../class.ts` and comes later. */
export const classBook: Reworded<typeof english> = {
  band: 'CLASE: prácticas entre estudiantes, en ningún registro',
  pageTitle: (f) => `CLASE · ${f.text} · Evenfall`,
  pageTitleInvented: (f) => `INVENTADO · CLASE · ${f.text} · Evenfall`,
  link: 'Clase: prácticas entre estudiantes',
  refusing: 'Negarse no necesita motivo, y no se anota nada.',
  pseudonym: 'Seudónimo',
  years: (f, say) => say.counted(f.years, YEARS),
  checkTitle: '¿Es esa persona, y está de acuerdo?',
  checkAsk: 'Pídale que diga su seudónimo y si está de acuerdo en que se le mida ahora.',
  agrees: 'Es esa persona y está de acuerdo',
  refuses: 'Se niega, o es otra persona',
  incidental: 'Un hallazgo casual: el docente se lo dice a la persona en privado y le ayuda a que lo miren.',
  actNowSays:
    'No espere a esta página. Después de firmar, diga en la ronda a quién avisó y qué le respondieron.',
  rounds: 'Rondas',
  signHint:
    'Lo que se firma se guarda en esta sesión y en ningún registro. Se borra cuando termina la sesión.',
};

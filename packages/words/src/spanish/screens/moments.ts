import type { moments as english } from '../../english/screens/moments.js';
import type { Reworded } from '../../reworded.js';

const TOUCHES = { one: 'toque', other: 'toques' };

/** As in `english/screens/moments`. */
export const moments: Reworded<typeof english> = {
  way: 'Cómo se anotan los ruidos',
  remember: 'Recordarlos',
  mark: 'Marcar cada ruido',
  valve: 'Toque al abrir la válvula',
  first: 'Toque en el primer ruido',
  last: 'Toque en el último ruido',
  more: 'Otra vez, si después vino otro',
  how: 'Toque en cualquier sitio, o use un pulsador, un pedal o la barra espaciadora.',
  soFar: (f, say) => `${say.counted(f.touches, TOUCHES)} hasta ahora`,
  undo: 'Retirar uno',
  untimed: 'Leer sin tiempos',
  readGauge: 'Lea el manómetro',
  notRead: 'todavía sin leer',
  unread: (f) => `${f.text}: todavía sin leer. Dé lo que marcaba el manómetro, en mmHg.`,
  noNumber: (f) => `${f.text}: «${f.got}» no es un número. Dé lo que marcaba el manómetro, en mmHg.`,
  mayStayEmpty: 'puede quedar vacío',
  isAt: (f, say) => `${say.short(f.mmHg)} mmHg`,
  gaugeOf: (f) => `${f.text} (mmHg)`,
  onGauge: (f) => `${f.text}, en el manómetro`,
  which: 'Qué momento muestra el manómetro',
  lower: 'Una marca menos',
  higher: 'Una marca más',
  next: (f) => `Siguiente: ${f.text}`,
  void: 'Se salió de la pantalla mientras se desinflaba el manguito: sus tiempos son nulos. Los números aún se pueden guardar, si los sabe.',
  notThese: '¿No son estos momentos? O más sobre este inflado',
  whatAt: (f, say) => `El toque a los ${say.short(f.seconds, 1)} s fue`,
};

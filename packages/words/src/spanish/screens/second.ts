import type { second as english } from '../../english/screens/second.js';
import type { Reworded } from '../../reworded.js';

const TOUCHES = { one: 'toque', other: 'toques' };

/** As in `english/screens/second`. */
export const second: Reworded<typeof english> = {
  way: 'Marca una segunda persona',
  opening: 'Pidiendo un código …',
  unreachable:
    'Sin código: no se llega al servidor. Se vuelve a pedir; mientras tanto, marque usted los ruidos o recuérdelos.',
  over: 'El código ha caducado.',
  anew: 'Un código nuevo',
  refused: 'Esta cuenta no toma signos, así que nadie puede marcar para ella.',
  code: 'Código para el otro dispositivo',
  how: (f, say) =>
    `En el otro dispositivo: página de inicio, «Marcar para otra persona», y este código. Vale ${say.counted(f.minutes, { one: 'minuto', other: 'minutos' })}.`,
  picture: 'Dirección de la página del otro dispositivo, como imagen QR',
  waiting: 'Todavía no se ha unido nadie. Si infla ahora, marca usted los ruidos.',
  joined: 'El otro dispositivo está listo: él marca, usted mira el manómetro.',
  marks: 'Marca la segunda persona',
  soFarHere: 'Los toques aquí no marcan nada.',
  unheard:
    'No se sabe nada del otro dispositivo. Lo que marca queda guardado allí y llega cuando vuelva; usted puede seguir sin él.',
  cutOff:
    'Este dispositivo no llega al servidor. Lo que marca el otro llega cuando se pueda; usted puede seguir sin él.',
  takeOver: 'Desde ahora marco yo',
  title: 'Marcar para otra persona',
  intro:
    'Otra persona desinfla un manguito; usted marca en este dispositivo cuándo se abre la válvula y cuándo vienen y se van los ruidos. Escriba el código que muestra su dispositivo.',
  typed: 'Código',
  join: 'Unirse',
  joining: 'Uniéndose, y poniendo de acuerdo los dos relojes …',
  codeMissing: 'Escriba el código que muestra el otro dispositivo: seis letras y cifras.',
  wrong: 'Nadie espera con este código. Se escribió mal, o ya caducó: pida el código que figura allí ahora.',
  taken: 'Ya se unió otro dispositivo con este código. Pida uno nuevo.',
  mayNot: 'Esta cuenta no toma signos, así que tampoco puede marcar.',
  tooOften: 'Demasiados códigos equivocados. Pruebe de nuevo dentro de un cuarto de hora.',
  offline: 'No se llega al servidor. No se ha perdido nada; pruebe de nuevo.',
  ofCode: (f) => `Código ${f.text}`,
  valve: 'Toque cuando se abra la válvula',
  isKept: 'Han llegado todos sus toques.',
  notSent: 'Sin conexión. Lo que marque queda guardado aquí y se envía cuando vuelva; siga marcando.',
  clocks: (f, say) => `Los relojes de los dos dispositivos concuerdan dentro de ${say.short(f.ms)} ms.`,
  clocksCoarse: (f, say) =>
    `Los relojes de los dos dispositivos concuerdan solo dentro de ${say.short(f.ms)} ms, más de lo que se dispersa un pulgar por sí mismo (${say.short(f.thumb)} ms): entre un momento marcado aquí y uno marcado allí, el tiempo no es mejor que eso.`,
  notYet: 'El otro manguito todavía no se infla; lo que se toque antes no cuenta.',
  runOver: 'Aquel desinflado ha terminado; el siguiente también se marca aquí.',
  ended: 'Ya no se marca nada para aquel dispositivo. Gracias.',
  late: (f, say) =>
    `De los suyos, puede que ${say.counted(f.touches, TOUCHES)} no hayan llegado a tiempo: avise a quien medía.`,
  leave: 'Dejar de marcar',
  markedBy: 'Quién marcó',
  bySecond: 'una segunda persona en otro dispositivo.',
  byBoth: (f) => `una segunda persona en otro dispositivo (${f.moments}), lo demás quien medía.`,
};

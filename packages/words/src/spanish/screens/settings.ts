import type { settings as english } from '../../english/screens/settings.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/settings`. */
export const settings: Reworded<typeof english> = {
  title: 'Preferencias',
  lead: 'Para este dispositivo, lo use quien lo use. Nada cambia en los registros.',
  language: 'Idioma',
  asBrowser: (f) => `el del navegador (${f.text})`,
  notReviewed: (f) => `${f.text}: esta traducción no ha tenido revisión clínica.`,
  dates: 'Fechas',
  asLanguage: (f) => `las del idioma (${f.text})`,
  hours: 'Hora del día',
  temperature: 'Temperatura',
  length: 'Longitudes',
  mass: 'Peso',
  Cel: '°C',
  '[degF]': '°F',
  cm: 'cm',
  '[in_i]': 'in (pulgadas)',
  kg: 'kg',
  '[lb_av]': 'lb (libras)',
  paper: 'Papel de los archivos para imprimir',
  a4: 'A4',
  letter: 'Carta (EE. UU.)',
  notKept: 'Este navegador no guarda nada entre visitas: su elección vale hasta que se cierre la página.',
};

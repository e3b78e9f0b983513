import type { answers as english } from '../../english/screens/answers.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/answers`. */
export const answers: Reworded<typeof english> = {
  '400': 'No se pudo leer la petición',
  '401': 'Entre primero',
  '403': 'Se rechaza esta petición',
  '404': 'No se encuentra',
  '405': 'Método no permitido',
  '409': 'Ya está guardado con otro contenido',
  '413': 'Demasiado grande',
  '415': 'Se espera JSON',
  '422': 'Se rechazaron algunos valores',
  '429': 'Demasiadas veces',
  '500': 'Evenfall falló',
  '503': 'Todavía no está listo',
  other: 'Rechazado',
  'not-json': 'El cuerpo no es JSON que pueda leerse.',
  'not-of-role': 'Esta cuenta no puede hacer eso.',
  'other-address': 'Este servidor responde solo a su propia dirección.',
  'other-page': 'Este servidor responde solo a sus propias páginas.',
  'backup-expected': 'Se espera una copia de seguridad.',
  'database-away': 'Ahora mismo no se llega a la base de datos. No se guardó nada de esto: envíelo otra vez.',
};

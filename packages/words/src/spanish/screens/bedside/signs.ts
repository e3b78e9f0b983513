import type { signs as english } from '../../../english/screens/bedside/signs.js';
import type { Reworded } from '../../../reworded.js';

/** As in `english/screens/bedside/signs`. */
export const signs: Reworded<typeof english> = {
  temperatureIs: (f, say) => `${say.temperature(f.celsius)}, ${f.site}`,
  onAirIs: (f) => `${f.percent} % con aire ambiente`,
  onOxygenIs: (f) => `${f.percent} % con oxígeno`,
  onOxygenByIs: (f) => `${f.percent} % con oxígeno, ${f.how}`,
  painOnLine: (f) => `${f.mm} mm de 100`,
  painIs: (f) => `${f.score} de 10`,
  weightIs: (f, say) => `${say.mass(f.kg)}, ${f.how}`,
  heightIs: (f, say) => `${say.length(f.cm)}, ${f.how}`,
  lengthIs: (f, say) => `${say.length(f.cm)} en decúbito, ${f.how}`,
  litres: (f, say) => `${say.short(f.litres, 2)} L/min`,
  share: (f, say) => `oxígeno al ${say.short(f.percent, 1)} %`,
  title: 'Otros signos',
  change: 'Cambiarlo',
  typedAs: 'Escrito como',
  unkept: (f) => `Escrito y sin guardar: ${f.text}. Guárdelo, o no se firmará con esta ronda.`,
  'unit-celsius': 'Unidad de la temperatura',
  'unit-kg': 'Unidad del peso',
  'unit-cm': 'Unidad de la talla',
  'unit-armCm': 'Unidad del perímetro',
};

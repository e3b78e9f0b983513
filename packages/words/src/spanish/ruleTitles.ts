import type { ruleTitles as english } from '../english/ruleTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/ruleTitles`. */
export const ruleTitles: Reworded<typeof english> = {
  rule: {
    'count/pulseWindowsSeconds': 'ventanas que se ofrecen para el pulso',
    'count/breathsWindowsSeconds': 'ventanas que se ofrecen para las respiraciones',
    'count/pulseWindowSeconds': 'ventana habitual para un pulso que se palpa regular',
    'count/breathsWindowSeconds': 'ventana habitual para las respiraciones',
    'count/clock': 'cómo se pone en marcha el reloj: en un latido palpado o en cualquier momento',
    'count/first': 'cómo se llama al primer latido',
    'count/longestWindowSeconds': 'ventana más larga de un recuento que se acepta al escribirlo',
    'count/ceilingPerMinute': 'una frecuencia por encima de esta se rechaza por imposible',
    'count/fullWindowSeconds': 'el minuto entero que sigue a un recuento corto',
    'count/slowPerMinute': 'a un recuento corto del pulso por debajo de esto le sigue un minuto entero',
    'count/fastPerMinute': 'a un recuento corto del pulso por encima de esto le sigue un minuto entero',
    'count/barredAbovePerMinute':
      'un pulso por encima de esto es demasiado rápido para la ventana corta excluida',
    'count/barredWhenFastSeconds':
      'una ventana así de corta o más nunca basta para un pulso que es demasiado rápido para ella',
    'count/youngUnderMonths':
      'los lactantes y niños pequeños, a quienes se cuenta un minuto entero, tienen menos de esta edad',
    'count/disagreementPerMinute':
      'un recuento corto del pulso que difiere más de esto de la frecuencia anterior o de una pantalla se repite',
    'count/lookFirstWhenFarOut':
      'una frecuencia de adulto en los límites siguientes o más allá se señala: mire primero a la persona',
    'count/verySlowPulsePerMinute': 'un pulso de adulto así de lento o más: mire a la persona antes que nada',
    'count/veryFastPulsePerMinute':
      'un pulso de adulto así de rápido o más: mire a la persona antes que nada',
    'count/verySlowBreathsPerMinute':
      'respiraciones de adulto así de lentas o más: mire a la persona antes que nada',
    'count/veryFastBreathsPerMinute':
      'respiraciones de adulto así de rápidas o más: mire a la persona antes que nada',
    'count/adultFromMonths':
      'los límites de muy lento y muy rápido valen para personas de esta edad o más, o de edad desconocida',
    'count/fullMinuteWhenSlowOrFast':
      'se pide un minuto entero tras: un recuento corto del pulso bajo el límite lento o sobre el rápido',
    'count/fullMinuteWhenIrregular':
      'se pide un minuto entero tras: un pulso que se palpa irregular de algún modo',
    'count/fullMinuteWhenWeak': 'se pide un minuto entero tras: un pulso débil o difícil de palpar',
    'count/fullMinuteWhenFirstOnPerson':
      'se pide un minuto entero tras: la primera toma de signos de una persona',
    'count/fullMinuteWhenYoung': 'se pide un minuto entero tras: un lactante o niño pequeño',
    'count/fullMinuteWhenApical': 'se pide un minuto entero tras: un pulso apical',
    'count/fullMinuteWhenHeartRateDrug':
      'se pide un minuto entero tras: antes o después de un fármaco que actúa sobre la frecuencia cardíaca',
    'count/fullMinuteWhenDisagreeing':
      'se pide un minuto entero tras: un recuento corto del pulso que no concuerda con la frecuencia anterior o con una pantalla',
    'count/breathsShortAllowed': 'las respiraciones regulares pueden contarse en la ventana corta',
    'count/breathsShortWindowSeconds':
      'ventana más corta para respiraciones regulares donde el protocolo local permite una corta',
    'inflation/marginMmHg':
      'cuánto se infla el manguito por encima de la presión a la que se pierde el pulso',
    'inflation/smallMarginMmHg': 'un margen menor que este se señala como pequeño',
    'inflation/insideWithinMmHg':
      'sin tiempos, un primer ruido a esta distancia o menos por debajo del máximo puede no ser el primero: cerca de un latido a la velocidad enseñada',
    'inflation/gapAboveBackMmHg':
      'que el pulso vuelva más de esto por encima del primer ruido apunta a una laguna',
    'inflation/gapAboveLostMmHg':
      'que el pulso se pierda al inflar más de esto por encima del primer ruido apunta a una laguna: la pera avanza más o menos tanto en un latido',
    'inflation/waitAfterEstimateSeconds':
      'descanso mínimo del brazo entre la estimación por palpación y el inflado siguiente',
    'inflation/waitAfterReadingSeconds': 'descanso mínimo del brazo entre dos lecturas',
    'deflation/slowestMmHgPerSecond': 'desinflar más despacio que esto se señala',
    'deflation/fastestMmHgPerSecond': 'desinflar más deprisa que esto se señala',
    'deflation/perBeatWhen': 'en qué pulsos se juzga la bajada en un latido',
    'deflation/fastestPerBeatMmHg':
      'con un pulso lento o irregular, una bajada en un latido por encima de esto se señala',
    'deflation/slowPulsePerMinute': 'por debajo de esto la bajada se juzga por latido y no por segundo',
    'deflation/gaugeStepMmHg': 'graduación de un manómetro cuando no se dijo cuál',
    'deflation/gaugeReading': 'qué marca se lee cuando la aguja está entre dos',
    'deflation/toZeroMmHg':
      'los ruidos oídos hasta menos de esto siguieron hasta cero: en lugar del último ruido se usa el amortiguamiento',
    'deflation/threeNumbersMmHg': 'amortiguamiento y último ruido más separados que esto se escriben los dos',
    'deflation/lowestSystolic': 'una sistólica por debajo de esta se señala como inverosímil',
    'deflation/highestSystolic': 'una sistólica por encima de esta se señala como inverosímil',
    'deflation/lowestDiastolic':
      'una diastólica (la que se usa) por debajo de esta se señala como inverosímil',
    'deflation/highestDiastolic':
      'una diastólica (la que se usa) por encima de esta se señala como inverosímil',
    'deflation/smallestPulsePressureMmHg':
      'una sistólica menos de esto por encima de la diastólica se señala como inverosímil',
    'deflation/largestPulsePressureMmHg':
      'una sistólica más de esto por encima de la diastólica se señala como inverosímil',
    'cuff/scheme': 'la tabla con la que se elige el manguito para un brazo',
    'cuff/neverFor':
      'lo que excluye un brazo del todo; una fístula, un injerto, una derivación, un gotero o una amputación siempre lo hacen',
    'cuff/preferOtherFor': 'lo que hace mejor el otro brazo; este requiere entonces un nombre y un motivo',
    'cuff/childUnderMonths':
      'por debajo de esta edad se toma primero el brazo derecho, como hicieron las tablas de referencia',
    'cuff/latePregnancyFromWeeks':
      'desde esta semana, o si no se sabe la semana, ninguna embarazada yace plana boca arriba',
    'round/wantedSigns':
      'signos que necesitan un valor, o un motivo para no tenerlo, antes de firmar una ronda',
    'round/prepareFirst': 'una ronda empieza preparando a la persona',
    'round/palpateFirst':
      'la sistólica se palpa antes de escuchar los ruidos, para que no se escape ninguna laguna',
    'round/bothArmsFirstTime': 'la primera presión de una persona se toma en los dos brazos',
    'round/restSeconds': 'reposo tranquilo antes de una presión; 0 si ninguno',
    'category/adultScheme':
      'la guía cuyas categorías se muestran para personas de 18 años o más; ninguna muestra solo los valores',
    'category/childScheme':
      'la guía cuyas categorías se muestran para menores de 18 años; ninguna muestra solo los valores',
    'category/pregnancyScheme':
      'la guía cuyas categorías se muestran en el embarazo y las seis semanas posteriores; ninguna muestra solo los valores',
    'score/earlyWarning': 'se muestra la puntuación de alerta precoz de adultos',
    'score/oxygenScale':
      'la escala de una saturación cuando no se dice cuál; la 2 solo si un prescriptor con nombre lo decidió para cada persona',
    'score/sepsisScreen': 'se muestra el cribado de sepsis de adultos',
    'score/meanPressure': 'se muestra la presión media',
    'score/pulsePressure': 'se muestra la presión de pulso',
    'score/shockIndex': 'se muestran el índice de shock simple, el modificado y el ajustado por edad',
    'score/paediatricShockIndex': 'se muestra el índice de shock de un niño',
    'score/ratePressureProduct': 'se muestra el producto frecuencia por presión',
    'score/bodyMassIndex': 'se muestra el índice de masa corporal',
    'readings/rule': 'la guía por la que se toman y promedian las lecturas',
    'readings/gapSeconds': 'tiempo mínimo entre dos lecturas',
    'readings/difference': 'sistólica o diastólica de dos lecturas seguidas así de separadas: otra lectura',
    'readings/irregularReadings':
      'mínimo de lecturas con un pulso irregular, sea cual sea el nivel y la guía; se usa la media de todas',
    'readings/irregularAverage': 'qué lecturas de un pulso irregular se promedian: todas, o las de la guía',
    'readings/stopAtReadings': 'después de estas no se pide ninguna más',
    'arms/limitMmHg':
      'sistólica de un brazo así de alejada de la del otro, al repetir: el brazo de la más alta',
    'arms/pairsNeeded': 'pares de lecturas antes de que cuente una diferencia entre los brazos',
    'arms/lookFurtherMmHg': 'sistólica de un brazo así de alejada de la del otro: alguien lo estudia más',
    'recheck/atOnceWithinSeconds':
      'muy baja o persona enferma: se repite a mano de inmediato, es decir, antes de esto (número nuestro)',
    'recheck/pregnancyWithinSeconds':
      'grave en el embarazo y las semanas posteriores: se repite antes de esto',
    'recheck/severeRestSeconds': 'grave sin rasgo de urgencia: un reposo de esto, y después se repite a mano',
    'recheck/abnormalSoonSeconds': 'inesperadamente alta o baja: no se repite antes de esto',
    'recheck/abnormalSoonWithinSeconds': 'inesperadamente alta o baja: se repite antes de esto',
    'recheck/abnormalLaterSeconds': 'inesperadamente alta o baja: se repite otra vez tras un reposo de esto',
    'recheck/abnormalLaterWithinSeconds': 'inesperadamente alta o baja: se repite otra vez antes de esto',
    'actNow/switchedOff': 'condiciones que aquí no avisan; ninguna, salvo que el lugar lo diga',
    'actNow/severeSystolic': 'sistólica que es grave',
    'actNow/severeDiastolic': 'diastólica que es grave',
    'actNow/pregnancySystolic': 'sistólica que es grave en el embarazo',
    'actNow/pregnancyDiastolic': 'diastólica que es grave en el embarazo',
    'actNow/weeksAfterBirth': 'los límites del embarazo siguen valiendo después del parto',
    'actNow/childAboveP95MmHg':
      'más de esto por encima del percentil 95, un niño necesita atención inmediata',
    'actNow/adolescentSystolic':
      'por encima de esto, una persona de 13 a 17 años necesita atención inmediata',
    'actNow/adolescentDiastolic':
      'por encima de esto, una persona de 13 a 17 años necesita atención inmediata',
    'actNow/newbornLowSystolic': 'una sistólica por debajo de esta es baja, primer mes',
    'actNow/infantLowSystolic': 'una sistólica por debajo de esta es baja, de 1 a 12 meses',
    'actNow/childLowBaseSystolic':
      'sistólica baja de 1 a 10 años: por debajo de esto más lowChildPerYear por cada año',
    'actNow/olderChildLowSystolic': 'una sistólica por debajo de esta es baja, más de 10 años',
    'actNow/veryLowSystolic': 'sistólica muy baja de un adulto',
    'actNow/highTotal': 'puntuación de alerta precoz: alta desde este total',
    'actNow/mediumTotal': 'puntuación de alerta precoz: media desde este total',
    'actNow/singlePoints': 'puntos de una sola parte que alarman por sí mismos',
    'actNow/verySlowPulsePerMinute':
      'un pulso de adulto así de lento o más: mire a la persona antes que nada',
    'actNow/childSlowPulsePerMinute': 'pulso lento de un niño: con mala perfusión se inicia la reanimación',
    'actNow/veryFastPulsePerMinute':
      'un pulso de adulto así de rápido o más: mire a la persona antes que nada',
    'actNow/verySlowBreathsPerMinute':
      'respiraciones de adulto así de lentas o más: mire a la persona antes que nada',
    'actNow/veryFastBreathsPerMinute':
      'respiraciones de adulto así de rápidas o más: mire a la persona antes que nada',
    'actNow/lowOxygenPercent': 'saturación de oxígeno baja, escala 1',
    'actNow/lowOxygenScale2Percent': 'saturación de oxígeno baja, escala 2',
    'actNow/childLowOxygenPercent': 'un niño con menos es motivo de preocupación',
    'signing/countersignLearners': 'la ronda de un estudiante es preliminar hasta que se refrenda',
    'signing/deleteClassAtEnd':
      'las rondas de una clase se borran al final de su sesión, salvo que docente y persona medida las guarden',
    'equipment/mostRestMmHg': 'lo máximo que puede marcar un manómetro sin presión',
    'equipment/mostErrorMmHg': 'lo máximo que puede desviarse un manómetro en cualquier punto de su escala',
    'equipment/fewestPoints': 'mínimo de presiones en las que un manómetro se compara con otro',
    'equipment/fromMmHg': 'una comparación empieza en esta presión o por debajo, también en cero',
    'equipment/toMmHg': 'una comparación llega a esta presión',
    'equipment/mostLeakMmHgPerMinute':
      'lo máximo que pueden perder juntos manguito, tubos y manómetro con la válvula cerrada',
    'equipment/shortestLeakSeconds': 'tiempo mínimo en el que se juzga una fuga',
    'equipment/zeroDays':
      'una comprobación anotada del cero vale este tiempo; además se mira antes de cada lectura',
    'equipment/comparisonMonths':
      'una comparación de un manómetro aneroide o electrónico vale este tiempo, salvo que se caiga',
    'equipment/mercuryComparisonMonths':
      'una comparación de un manómetro de mercurio o de un aparato automático vale este tiempo',
    'equipment/leakMonths': 'una prueba de fuga vale este tiempo',
    'home/readingsInSitting': 'lecturas de una toma en casa',
    'home/daysAsked': 'días de medición que se piden',
    'home/droppedDays': 'primeros días de medición que no se promedian',
    'home/sittingUse': 'qué lecturas de una toma se promedian',
    'home/averaged': 'de qué es la media: de las lecturas o de las tomas, promediadas antes',
    'home/leastDays': 'mínimo de días de medición, contando los que se dejan fuera',
    'home/leastReadings':
      'mínimo de lecturas para una media, después de dejar fuera: dos días tras el primero, cuatro lecturas al día',
    'home/judged': 'qué se compara con los límites: una sola media, o mañana y noche cada una',
    'home/highSystolic': 'una media en casa de esto o más es alta',
    'home/highDiastolic': 'una media en casa de esto o más es alta',
    'home/scheme': 'cómo se nombra una media en casa',
    'home/averagesWrist': 'las lecturas en la muñeca se promedian, si no hay otras',
    'home/dayStartsAt': 'empieza un día en casa: una lectura anterior es de la noche previa',
    'home/morningTo': 'acaba la mañana',
    'home/eveningFrom': 'empieza la tarde-noche',
    'home/sittingGapMinutes': 'una lectura menos de esto después de la anterior es de la misma toma',
    'ambulatory/leastPercent': 'parte mínima de las lecturas programadas que hay que conservar',
    'ambulatory/leastDay': 'mínimo de lecturas de día',
    'ambulatory/leastNight': 'mínimo de lecturas de noche',
    'ambulatory/longestEmptyHours':
      'con un tramo sin lecturas de estas horas o más, el registro hay que repetirlo',
    'ambulatory/leastHours': 'el registro dura al menos esto',
    'ambulatory/judged': 'qué medias se comparan con sus límites; cualquiera en su límite es alta',
    'ambulatory/wholeMean': 'qué media de 24 horas se compara con su límite',
    'ambulatory/wholeSystolic': 'una media de 24 horas de esto o más es alta',
    'ambulatory/wholeDiastolic': 'una media de 24 horas de esto o más es alta',
    'ambulatory/daySystolic': 'una media de día de esto o más es alta',
    'ambulatory/dayDiastolic': 'una media de día de esto o más es alta',
    'ambulatory/nightSystolic': 'una media de noche de esto o más es alta',
    'ambulatory/nightDiastolic': 'una media de noche de esto o más es alta',
    'ambulatory/scheme': 'cómo se nombra una media de un registro',
    'ambulatory/editing': 'con qué regla se toma una lectura por un artefacto',
    'ambulatory/editingSds':
      'una lectura más alejada que esto de la media de su periodo se toma también por un artefacto',
    'ambulatory/dayFrom': 'empieza el día si no hay diario',
    'ambulatory/dayTo': 'acaba el día si no hay diario',
    'ambulatory/nightFrom': 'empieza la noche si no hay diario',
    'ambulatory/nightTo': 'acaba la noche si no hay diario',
    'ambulatory/reportsStiffness':
      'se informa del índice de rigidez; depende de la dispersión y de la caída nocturna',
  },
  ruleUnit: {
    s: 's',
    h: 'h',
    '/min': '/min',
    '%': '%',
    mmHg: 'mmHg',
    'mmHg/s': 'mmHg/s',
    'mmHg/min': 'mmHg/min',
    months: 'meses',
    weeks: 'semanas',
    days: 'días',
    minutes: 'minutos',
    'minutes from midnight': 'hora del día',
    readings: 'lecturas',
    pairs: 'pares',
    points: 'puntos',
    SD: 'DE',
  },
  perBeatWhen: {
    always: 'en cualquiera',
    'slow-or-irregular': 'en uno lento o irregular',
    never: 'en ninguno',
  },
  gaugeReading: { nearest: 'la más cercana', 'mark-above': 'la de encima' },
  irregularAverage: { all: 'todas', 'by-rule': 'las de la guía' },
};

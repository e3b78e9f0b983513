import type { debriefFaults as english } from '../../english/screens/debriefFaults.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

const TIMES = { one: 'vez', other: 'veces' };
type Figures = Readonly<Record<string, number>>;

function at(f: Figures, key: string, say: Say): string {
  return say.number(f[key] ?? Number.NaN);
}

function seconds(f: Figures, key: string, say: Say): string {
  return `${at(f, key, say)} s`;
}

/** As in `english/screens/debriefFaults`. */
export const debriefFaults: Reworded<typeof english> = {
  'fault-too-little-rest': 'Poco reposo antes',
  'fault-talking': 'Se habló durante la lectura',
  'fault-legs-crossed': 'Piernas cruzadas',
  'fault-back-unsupported': 'Espalda sin apoyo',
  'fault-full-bladder': 'Vejiga llena',
  'fault-caffeine': 'Café o té poco antes',
  'fault-nicotine': 'Fumó poco antes',
  'fault-cold': 'Con frío',
  'fault-arm-unsupported': 'Brazo sin apoyo',
  'fault-arm-height': 'Manguito no a la altura del corazón',
  'fault-cuff-loose': 'Manguito flojo',
  'fault-over-sleeve': 'Manguito sobre la ropa',
  'fault-tight-sleeve': 'Manga enrollada y apretada por encima del manguito',
  'fault-pressed-hard': 'Campana muy apretada',
  'fault-under-cuff': 'Campana debajo del manguito',
  'fault-chest-piece-off': 'Campana al lado de la arteria',
  'fault-pumped-again': 'Se volvió a inflar al bajar',
  'fault-beginner-fingers': 'El pulso palpado con dedos sin práctica',
  'fault-cuff-size': 'Manguito de tamaño equivocado',
  'fault-gauge-off': 'Manómetro que marca mal',
  'fault-hose-leaks': 'Manguito o tubo que pierde aire',
  'fault-too-fast': 'Se desinfló demasiado rápido',
  'fault-too-slow': 'Se desinfló demasiado lento',
  'fault-margin-small': 'Se infló demasiado poco por encima de donde se notó perder el pulso',
  'fault-not-felt-first': 'No se palpó antes dónde desaparece el pulso, y se infló poco',
  'fault-began-in-sounds': 'Había ruidos desde el primer latido',
  'fault-chest-piece-away': 'No se escuchó todo el tiempo',
  'fault-read-late': 'Aguja leída tarde',
  'fault-silent-gap':
    'Se cayó en el silencio auscultatorio: se tomó el primer ruido tras el silencio por el primero de todos',
  'fault-misheard': 'Se tomó otro ruido por el primero o el último',
  'fault-digit-habit': 'No se escribió la marca más cercana',
  'fault-on-no-sound': 'Se marcó donde no había ruido',
  'fault-misread-needle': 'Se escribió otro número que el de la aguja',
  'fault-parallax': 'Aguja mirada desde un lado',
  'fault-off-the-sound': 'Número lejos del ruido, y sin marcar a tiempo',
  'fault-not-heard': 'Ruidos débiles que no llegaron a este oído',
  'fault-noise': 'Ruido del lugar',

  'do-rest-five-minutes': 'Deje que la persona repose sentada cinco minutos antes.',
  'do-ask-for-silence': 'Pida silencio, y guárdelo usted también.',
  'do-feet-flat': 'Pida los dos pies apoyados en el suelo.',
  'do-support-back': 'Deje que la espalda se apoye en la silla.',
  'do-empty-bladder-first': 'Ofrezca antes ir al baño.',
  'do-wait-after-caffeine': 'Espere media hora después de café o té.',
  'do-wait-after-smoking': 'Espere media hora después de fumar.',
  'do-warm-room': 'Mida en una sala templada.',
  'do-support-arm': 'Apoye el brazo en algo.',
  'do-arm-at-heart': 'Lleve el centro del manguito a la altura del corazón.',
  'do-wrap-snugly': 'Ajuste el manguito de modo que apenas quepan uno o dos dedos debajo.',
  'do-bare-arm': 'Descubra el brazo.',
  'do-take-sleeve-off': 'Quite la manga en lugar de enrollarla.',
  'do-press-lightly': 'Deje la campana apoyada con suavidad, todo su borde en la piel.',
  'do-beside-the-cuff': 'Ponga la campana por debajo del borde del manguito.',
  'do-over-the-artery': 'Busque la arteria con los dedos y ponga la campana sobre ella.',
  'do-empty-and-wait': (f, say) =>
    `Deje salir todo el aire y espere ${say.short(f.afterReadingSeconds)} s antes de inflar otra vez.`,
  'do-measure-the-arm': 'Mida el brazo y elija el manguito según él.',
  'do-check-the-gauge':
    'Mire el cero del manómetro antes de empezar: tome otro en lugar del que no marque bien, y haga revisar aquel.',
  'do-check-the-hose':
    'Con la válvula cerrada, mire si la aguja se queda quieta; si no, tome otro manguito con su tubo y haga reparar este.',
  'do-look-straight-on': 'Ponga el manómetro a la altura de los ojos y mírelo de frente.',
  'do-two-to-three-a-second':
    'Desinfle de 2 a 3 mmHg por segundo y, si el pulso es lento o irregular, no más de 2 mmHg por latido.',
  'do-feel-and-add-thirty': (f, say) =>
    `Palpe dónde desaparece el pulso e infle ${say.short(f.marginMmHg)} mmHg por encima.`,
  'do-feel-lightly': 'Palpe con dos o tres yemas tibias, con suavidad, y espere el latido.',
  'do-feel-first': (f, say) =>
    `Palpe en la muñeca dónde desaparece el pulso, deje salir todo el aire, espere un poco e infle ${say.short(f.marginMmHg)} mmHg por encima.`,
  'do-let-out-and-higher': (f, say) =>
    `Si hay ruidos enseguida, deje salir todo el aire, espere e infle ${say.short(f.marginMmHg)} mmHg más alto.`,
  'do-wait-for-the-sound':
    'Guíese por el ruido y no por el vaivén de la aguja: el primero de dos seguidos, y el último que oiga.',
  'do-listen-from-above':
    'Escuche desde más arriba de donde se notó perder el pulso, para lo que infló bastante, y quédese con el primer ruido que oiga allí: los que vuelven tras un silencio no son el primero.',
  'do-feel-and-listen-from-above': (f, say) =>
    `Palpe dónde desaparece el pulso, infle ${say.short(f.marginMmHg)} mmHg por encima, escuche desde allí y quédese con el primer ruido: los que vuelven tras un silencio no son el primero.`,
  'do-no-time-for-that': 'Nada: con quien no puede esperar no había tiempo para eso.',
  'do-read-the-scale': 'Mire el manómetro de frente, y lea dos veces la marca bajo la aguja.',
  'do-mark-in-time': 'Marque cada ruido al oírlo.',
  'do-keep-listening':
    'Mantenga la campana puesta desde antes del primer ruido hasta bien después del último.',
  'do-eye-on-the-needle': 'Mantenga el ojo en la aguja y tome su lugar en el ruido mismo.',
  'do-first-of-two-last-of-all': 'Tome el primero de dos ruidos seguidos, y el último de todos.',
  'do-nearest-mark': 'Escriba la marca más cercana del manómetro, acabe en el dígito que acabe.',
  'do-amplify-or-feel':
    'Use un estetoscopio amplificado o su audífono, que no es una falta, o tome la sistólica por palpación.',
  'do-amplify-too':
    'Con el audífono puesto, use también un estetoscopio amplificado, que no es una falta, o tome la sistólica por palpación.',
  'do-aid-too':
    'Lleve también su audífono si tiene uno, que no es una falta, o tome la sistólica por palpación.',
  'do-feel-instead': 'Tome la sistólica por palpación, y diga que lo hizo así.',
  'do-measure-first':
    'Ponga el manguito, ínflelo y escuche o palpe mientras baja; un número que no se midió no se escribe.',
  'do-sound-on':
    'Encienda el sonido antes de inflar, o haga que se muestren los ruidos; lo que no se oyó no se escribe.',
  'do-keep-fingers-on':
    'Ponga los dedos en la muñeca antes de inflar, y déjelos hasta que el pulso haya vuelto; lo que no se palpó no se escribe.',
  'do-quiet-place': 'Busque un lugar más tranquilo, o tome la sistólica por palpación y dígalo.',

  conduct: 'Qué más no fue como debía',
  'conduct-not-told': 'Aquí había algo que avisar enseguida, y usted dijo que puede esperar',
  'conduct-muffled-not-written':
    'Los ruidos siguieron mucho más abajo, y no se escribió el número en el que se apagaron',
  'conduct-nothing-measured':
    'No se midió nada: no se infló ni desinfló ningún manguito, y aun así se escribieron números',
  'conduct-nothing-in-ears':
    'No había sonido encendido ni ruidos a la vista, y aun así se escribieron números',
  'conduct-nothing-felt': 'Bajo sus dedos no había vuelto ningún pulso, y aun así se escribió un número',
  'conduct-nothing-to-hear': 'En este desinflado nadie habría podido oír un ruido',
  'conduct-felt-not-first': 'No se palpó antes dónde desaparece el pulso; esta vez no costó nada',
  'conduct-arm-not-rested': (f, say) =>
    `El manguito se volvió a inflar a los ${seconds(f, 'waitedSeconds', say)}, cuando tocan ${seconds(f, 'neededSeconds', say)} de descanso; antes se había inflado ${say.counted(f.inflations ?? 0, TIMES)}`,
  'conduct-held-on-the-way': (f, say) =>
    `El manguito se detuvo a ${at(f, 'mmHg', say)} mmHg durante ${seconds(f, 'heldSeconds', say)} en medio de los ruidos`,
  'conduct-pumped-too-high': (f, say) =>
    `Se infló hasta ${at(f, 'mmHg', say)} mmHg${(f.times ?? 1) > 1 ? ` (tan alto ${say.counted(f.times ?? 1, TIMES)})` : ''}, cuando bastaban ${at(f, 'neededMmHg', say)}`,
  'conduct-pulse-miscounted': (f, say) =>
    `Pulso: contó ${at(f, 'n', say)} en ${seconds(f, 'windowSeconds', say)}, y había ${at(f, 'there', say)}`,
  'conduct-pulse-window-short': (f, say) =>
    `El pulso se contó ${seconds(f, 'windowSeconds', say)}, cuando tocan ${seconds(f, 'neededSeconds', say)}`,
  'conduct-apex-not-counted': (f, say) =>
    `El corazón latió ${at(f, 'deficitPerMinute', say)} veces por minuto más de lo que notó la muñeca, y nadie escuchó en el ápex`,
  'conduct-apex-miscounted': (f, say) =>
    `En el ápex contó ${at(f, 'n', say)} en ${seconds(f, 'windowSeconds', say)}, y había ${at(f, 'there', say)}`,
  'conduct-apex-window-short': (f, say) =>
    `En el ápex se contó ${seconds(f, 'windowSeconds', say)}, cuando tocan ${seconds(f, 'neededSeconds', say)}`,
  'conduct-breaths-miscounted': (f, say) =>
    `Respiraciones: contó ${at(f, 'n', say)} en ${seconds(f, 'windowSeconds', say)}, y había ${at(f, 'there', say)}`,
  'conduct-breaths-window-short': (f, say) =>
    `Las respiraciones se contaron ${seconds(f, 'windowSeconds', say)}, cuando tocan ${seconds(f, 'neededSeconds', say)}`,
  'conduct-pulse-rhythm-not-said': 'El pulso era irregular, y no se anotó',
  'conduct-breaths-rhythm-not-said': 'La respiración era irregular, y no se anotó',
  'conduct-not-marked':
    'No se marcó cuándo se oyó cada ruido, así que no se puede separar oído, ojo y memoria',
  'conduct-first-not-marked':
    'Solo se marcó a tiempo su último ruido, y su diastólica se juzga por esa marca; la sistólica se escribió sin marca, así que de ella no se puede separar qué fue del oído, del ojo o de la memoria',
  'conduct-last-not-marked':
    'Solo se marcó a tiempo su primer ruido, y su sistólica se juzga por esa marca; la diastólica se escribió sin marca, así que de ella no se puede separar qué fue del oído, del ojo o de la memoria',
  'do-tell-at-once': 'Avise a alguien enseguida, según el procedimiento de su lugar.',
  'do-three-numbers': 'Donde los ruidos siguen, escriba tres números: primero, apagado, último.',
  'do-by-feel': 'Tome la sistólica por palpación, y dígalo.',
  'do-rest-the-arm': (f, say) =>
    `Deje salir todo el aire y que el brazo descanse: ${say.short(f.afterFeelingSeconds)} s tras palpar, ${say.short(f.afterReadingSeconds)} s tras una lectura.`,
  'do-never-stop': 'Desinfle de forma pareja, sin parar: la sangre retenida en el brazo cambia los ruidos.',
  'do-no-higher': (f, say) =>
    `Infle a pasos y pare ${say.short(f.marginMmHg)} mmHg por encima de donde desaparece el pulso: más duele.`,
  'do-count-every-beat': 'Deje el dedo quieto y cuente cada latido hasta que acabe el tiempo.',
  'do-count-longer-pulse':
    'Cuente más tiempo: al menos medio minuto, y uno entero si el pulso es lento, rápido o desigual.',
  'do-count-at-apex':
    'Si el pulso es desigual, escuche también en el ápex un minuto entero, e informe de los dos números y de su diferencia.',
  'do-count-each-pair': 'Cuente cada par de ruidos como un latido, hasta que acabe el tiempo.',
  'do-count-full-minute': 'En el ápex cuente un minuto entero.',
  'do-count-whole-breaths': 'Cuente cada subida del pecho una vez, hasta que acabe el tiempo.',
  'do-say-irregular': 'Anote junto a la frecuencia que era irregular.',
  'do-count-longer-breaths': 'Cuente las respiraciones durante un minuto entero.',
  'lesson-by-feel': 'Tome la sistólica por palpación, y escríbala así.',
  'lesson-pulse-full-minute': 'Cuente el pulso un minuto entero.',
  'lesson-breaths-full-minute': 'Cuente las respiraciones un minuto entero.',
  'lesson-apex-rate': 'Cuente también en el ápex, un minuto entero, y escriba las dos frecuencias.',
  'lesson-pulse-irregular': 'Diga que el pulso es irregular.',
  'lesson-breaths-irregular': 'Diga que la respiración es irregular.',
  'lesson-pulse-weak': 'Diga que el pulso es débil.',
  'lesson-pulse-strong': 'Diga que el pulso es fuerte.',
  'lesson-three-readings': 'Tome tres lecturas: una sola dice poco cuando no hay dos latidos iguales.',
  'lesson-standing-readings': 'Mida otra vez tras uno y tres minutos de pie.',
  'lesson-other-arm': 'Mida también el otro brazo.',
  'lesson-noise-of-place': 'Busque un lugar más tranquilo, o tome la sistólica por palpación y dígalo.',
  'lesson-pulse-rate': 'Cuente el pulso.',
  'lesson-breaths-rate': 'Cuente las respiraciones.',
  'lesson-temperature': 'Tome la temperatura.',
};

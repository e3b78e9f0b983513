import type {
  commandLine as commandLineText,
  commands as commandTexts,
  options as optionTexts,
} from '../english/commandLine.js';
import type { Reworded } from '../reworded.js';
import { BEATS, BREATHS, ENTRIES, TAPS } from './screens/nouns.js';

const PERSONS = { one: 'persona', other: 'personas' };
const VALUES = { one: 'valor', other: 'valores' };
const PROBLEMS = { one: 'problema', other: 'problemas' };
const FINDINGS = { one: 'hallazgo', other: 'hallazgos' };

/** As in `english/commandLine`. */
export const commands: Reworded<typeof commandTexts> = {
  count: 'Convierte latidos o respiraciones contados en una ventana en una frecuencia y su intervalo',
  taps: 'Convierte un fichero de tiempos de toques en una frecuencia, su intervalo y una palabra para el ritmo',
  run: 'Convierte un inflado y desinflado del manguito en una presión, sus intervalos y qué hacer mejor',
  reading: 'Lee una presión tal como se escribe: 148/92 76, 122/P, 118/62/0, 186/94, gap 186-152',
  cuff: 'Dice qué manguito va bien a un brazo y qué haría el que se tiene a mano',
  average: 'Promedia las lecturas de un brazo como lo hace una guía y dice qué falta todavía',
  category: 'Dice en qué categoría de una guía cae una presión',
  child: 'Dice dónde queda la presión de un niño por sexo, edad y talla',
  score: 'Calcula una puntuación o un valor hecho de varios signos y dice qué falta',
  home: 'Dice a qué equivalen las lecturas tomadas en casa según una guía, qué se excluyó y por qué',
  ambulatory: 'Dice a qué equivale un registro de 24 horas, de día y de noche',
  variability:
    'Decir cómo va la variación de las series de muchas personas con su media, desde las líneas JSON de home o ambulatory',
  usual: 'Dice dónde está la presión habitual y con qué probabilidad alcanza un umbral',
  orthostatic: 'Dice si la presión bajó al pasar de estar acostado o sentado a estar de pie',
  simulate:
    'Visita a una persona simulada: qué era cierto, cada latido y sonido, y qué lee un buen observador',
  plan: 'Dice en qué falla una forma de medir en muchas personas simuladas, y cuánto tiempo de un clínico lleva',
  sound:
    'Escribe cómo suena un desinflado del manguito de una persona simulada como fichero WAV, con el manómetro al lado',
  serve: 'Pone en marcha Evenfall en este equipo y muestra su dirección',
  account: 'Crea, lista, cambia y cierra las cuentas de quienes entran',
  backup: 'Escribe todo lo guardado en un fichero de líneas JSON y lo comprueba',
  restore: 'Vuelca una copia de seguridad en un registro vacío, todo o nada',
  check: 'Recalcula cada valor a partir de su evidencia y muestra lo que difiere',
  equipment: 'Lista los manómetros con su estado, y los manguitos por sala',
  export:
    'Escribe el registro de una persona en un fichero: una tabla, un bundle FHIR para otro sistema, o texto',
  import:
    'Incorpora un bundle FHIR o una tabla escrita por export; lo rechazado se lista, el resto se guarda',
  help: 'Muestra para qué sirve una orden y qué admite',
};

export const options: Reworded<typeof optionTexts> = {
  n: 'latidos o respiraciones contados',
  window: 'duración de la ventana, más de 0 y como mucho 300 s',
  clock: 'si el reloj empezó en un latido o en cualquier momento (any si falta)',
  first: 'cómo se llamó al primer latido (1 si falta)',
  of: 'qué se contó (pulse si falta)',
  actions: 'lo que hacen las manos, en JSON (las manos del manual si falta); - para la entrada estándar',
  planProtocol: 'la forma de medir, en JSON; lo que no dice es como en el manual',
  planAgainst: 'otra forma, probada en las mismas personas',
  people: 'en cuántas personas se prueba (10000 si falta)',
  workers:
    'cuántos hilos trabajan en ello (tantos como procesadores tenga el equipo, si falta); la respuesta es la misma',
  fileWorkers:
    'cuántos hilos responden a muchos archivos (tantos como compense, si falta); las líneas son las mismas y en el mismo orden',
  seed: 'el número del que sale el azar: el mismo da la misma toma (1 si falta)',
  soundRate: 'a qué velocidad se desinfla el manguito, en mmHg por segundo (2,5 si falta)',
  soundOut: 'el fichero WAV que se escribe; el manómetro va en un fichero CSV del mismo nombre',
  listeningEnd: 'qué lado del fonendoscopio está sobre la piel (bell, la campana, si falta)',
  withRoom: 'con el ruido del lugar',
  loudspeaker:
    'con una voz para altavoces pequeños, más aguda que la de un fonendoscopio; con auriculares no hace falta',
  rhythm: 'cómo se notó el ritmo',
  strength: 'con qué fuerza se notó el pulso',
  firstSet: 'es la primera serie de signos de esta persona',
  ageMonths: 'edad de la persona en meses',
  previous: 'la frecuencia registrada antes',
  deviceRate: 'la frecuencia que muestra un aparato',
  site: 'dónde se contó',
  heartRateDrug: 'se acaba de dar o toca dar un fármaco que actúa sobre la frecuencia cardiaca',
  systolic: 'presión sistólica en mmHg; una media puede tener decimales',
  diastolic: 'presión diastólica en mmHg; se omite donde no la hay',
  guideline: 'la guía cuyas categorías se usan',
  childGuideline: 'la guía cuyos límites se usan (la única que hay, si falta)',
  age: 'edad en años cumplidos',
  sex: 'qué tablas de referencia se usan',
  pregnant: 'embarazo o las seis semanas siguientes: se usan los límites del embarazo',
  heightCm: 'talla de pie en cm',
  deflationPreset: 'las reglas publicadas para desinflar y leer',
  inflationPreset: 'las reglas publicadas para inflar',
  runRhythm: 'cómo se notó el pulso',
  gaugeStep: 'cada cuánto está marcado el manómetro (lo de las reglas si falta)',
  arm: 'perímetro del brazo en su punto medio, en cm',
  cuffScheme: 'entre qué manguitos se elige (los de las reglas si falta)',
  atHand: 'el manguito a mano, por su id en el esquema',
  preset: 'las reglas publicadas o locales que se usan',
  noRepair: 'deja como están los toques perdidos y los dobles',
  lan: 'para llegar desde teléfonos de la misma red, por TLS; debe haber una cuenta de titular',
  host: 'la dirección en la que se escucha con --lan (todas las del equipo si falta)',
  certificate: 'un certificado TLS propio (PEM, con su cadena); se crea uno si falta',
  key: 'la clave de ese certificado (PEM)',
  port: 'dónde se escucha en este equipo (4780 si falta, 4781 para la demostración)',
  demo: 'la consulta inventada de demostración, en una carpeta propia',
  data: 'la carpeta que contiene el registro (el lugar habitual si falta)',
  account: 'de quién es el registro, cuando lo ejecuta root',
  accountName: 'quién es, tal como lo dicen los registros',
  signIn: 'el nombre corto con el que entra',
  role: 'qué puede hacer: owner, clinician, supervisor, learner; varios separados por comas',
  log: 'escribe una línea por petición, entrada y cambio de una cuenta, sin nombres ni valores',
  replace: 'sustituye una copia de seguridad que ya existe',
  person: 'el id de la persona (está en la dirección de su página)',
  book: 'qué libro (care si falta)',
  as: 'qué se escribe',
  template: 'con qué plantilla se hace un texto (handover si falta)',
  importPerson: 'para el registro de quién es (de quien nombre el fichero si falta)',
  withIdentity: 'escribe también quién es la persona (se omite si falta)',
  language: 'el idioma de lo que dice (si falta, EVENFALL_LANGUAGE o en)',
  json: 'responde con un objeto JSON en una línea',
  list: 'lista lo que se puede elegir',
  help: 'muestra este texto',
  version: 'muestra la versión',
};

export const commandLine: Reworded<typeof commandLineText> = {
  usage: 'Uso',
  commandsHeading: 'Órdenes',
  optionsHeading: 'Opciones',
  moreHelp: 'evenfall help ORDEN muestra lo que admite una orden.',
  source: 'fuente',
  itemVersion: (f) => `versión ${f.version}`,
  next: 'Después',
  noRate: 'sin frecuencia',
  note: 'Nota',
  wrote: (f) => `Escrito: ${f.path}`,
  rhythm: 'Ritmo',
  repaired: 'Reparado',
  fault: (f) => `Evenfall falló, y no por lo que usted escribió: ${f.cause}`,
  expected: (f) => `se esperaba ${f.expected}`,
  expectedGot: (f) => `se esperaba ${f.expected} y llegó ${f.got ?? 'nada'}`,
  moreProblems: (f, say) => `${say.counted(f.problems, PROBLEMS)} más de este fichero`,
  between: (f, say) => `entre ${say.short(f.low)} y ${say.short(f.high)}`,
  fromUnder: (f, say) => `desde ${say.short(f.low)} hasta menos de ${say.short(f.high)}`,
  overUpTo: (f, say) => `más de ${say.short(f.low)}, hasta ${say.short(f.high)}`,
  fromTo: (f, say) => `de ${say.short(f.low)} a ${say.short(f.high)}`,
  likely: (f, say) => `probable de ${say.number(f.low, 1)} a ${say.number(f.high, 1)}`,
  beatsIn: (f, say) => `de ${say.counted(f.n, BEATS)} en ${say.short(f.seconds)} s`,
  breathsIn: (f, say) => `de ${say.counted(f.n, BREATHS)} en ${say.short(f.seconds)} s`,
  fromTaps: (f, say) => `de ${say.counted(f.taps, TAPS)}`,
  step: (f, say) => `uno más o menos la cambiaría en ${say.short(f.perMinute)}`,
  countFor: (f, say) => `cuente ${say.short(f.seconds)} s`,
  missedAfter: (f, say) =>
    `tras el toque ${say.number(f.index)}: ${say.counted(f.added, TAPS)} de menos, repuestos`,
  doubledAt: (f, say) => `toque ${say.number(f.index)}: doble, retirado`,
  simulated: 'SIMULADO',
  letDownHeard: (f, say) =>
    `${say.number(f.seconds)} s: inflado hasta ${say.number(f.peakMmHg)} mmHg, desinflado a ${say.short(f.mmHgPerSecond)} mmHg por segundo`,
  soundFile: 'Sonido',
  gaugeFile: 'Manómetro',
  truth: 'Verdad',
  truthAtRest: (f, say) =>
    `${say.number(f.systolic)}/${say.number(f.diastolic)} en reposo, ${say.number(f.duringSystolic)}/${say.number(f.duringDiastolic)} en el minuto en torno a esta toma, como la oiría un oyente perfecto`,
  gap: 'Silencio',
  gapNone: 'ninguno: los ruidos siguen del primero al último',
  gapFrom: (f, say) => `de ${say.number(f.topMmHg)} hasta ${say.number(f.bottomMmHg)} mmHg`,
  phases: 'Fases',
  phasesNone: 'no había nada que oír',
  phaseFrom: (f, say) => `${f.phase} ${say.number(f.fromMmHg)} a ${say.number(f.toMmHg)}`,
  loudspeakerVoice:
    'Esta es la voz para altavoces pequeños: una lectura tomada con ella no demuestra lo que se oye por un fonendoscopio.',
  visitOf: (f, say) => `${say.number(f.seconds)} s, inflado hasta ${say.number(f.peakMmHg)} mmHg`,
  read: 'Lectura',
  readingOf: (f, say) => `${say.number(f.systolic)}/${say.number(f.diastolic)} por un buen observador`,
  offBy: (f, say) =>
    `${f.part} ${f.mmHg < 0 ? '−' : '+'}${say.number(Math.abs(f.mmHg), 1)} respecto a ese minuto: ${f.why}`,
  offPart: (f, say) => `${f.part} ${f.mmHg < 0 ? '−' : '+'}${say.number(Math.abs(f.mmHg), 1)}`,
  off: 'Diferencia',
  nothingRead: 'sin presión: no se oyó nada',
  scenarioItem: (f, say) =>
    `${f.title} (${f.isWoman ? 'mujer' : 'hombre'}, ${say.number(f.ageYears)} a). ${f.lesson}`,
  planned: (f, say) => `${say.number(f.percent)} %`,
  planPeople: (f, say) =>
    `${say.counted(f.people, PERSONS)}, con su presión habitual conocida; el error es lo medido menos esa`,
  planFirst: 'Este protocolo',
  planSecond: 'El otro',
  planApart: 'Diferencia',
  planSide: (f, say) =>
    `de media ${say.number(Math.abs(f.bias), 1)} mmHg demasiado ${f.bias < 0 ? 'baja' : 'alta'} (error propio del estudio ${say.number(f.error, 2)}), DE del error de una persona ${say.number(f.sd, 1)}`,
  planWithin: (f, say) =>
    `dentro de 5 mmHg ${say.percent(f.within5)}, de 10 ${say.percent(f.within10)}, de 15 ${say.percent(f.within15)}`,
  planWrong: (f, say) =>
    `en una categoría demasiado alta ${say.percent(f.up)}, en una demasiado baja ${say.percent(f.down)}; buena parte es de las personas mismas, que varían de una visita a otra`,
  planWithout: (f, say) => `sin ningún número ${say.percent(f.without)}; lo de arriba es de los demás`,
  planCount: (f, say) =>
    `${f.pulse ? 'el pulso' : 'las respiraciones'} según se cuenta: de media ${f.bias < 0 ? '−' : '+'}${say.number(Math.abs(f.bias), 1)} por minuto (error propio ${say.number(f.error, 2)}), DE ${say.number(f.sd, 1)}, a no más de 4 por minuto ${say.percent(f.within4)}`,
  planMinutes: (f, say) =>
    `${say.number(f.minutes, 1)} min de un clínico por persona, ${say.number(f.readings, 1)} lecturas`,
  planApartSystolic: (f, say) =>
    `sistólica ${say.number(f.mean, 2)} mmHg, este menos el otro (error propio ${say.number(f.standardError, 2)})`,
  planApartDiastolic: (f, say) =>
    `diastólica ${say.number(f.mean, 2)} mmHg (error propio ${say.number(f.standardError, 2)})`,
  planApartMinutes: (f, say) =>
    `${say.number(f.mean, 1)} min (error propio ${say.number(f.standardError, 2)})`,
  planApartWrong: (f, say) =>
    `en una categoría equivocada solo con este ${say.percent(f.onlyFirst)}, solo con el otro ${say.percent(f.onlySecond)}`,
  servedAt: 'Evenfall está en',
  inventedClinic: 'Todas las personas de esta consulta son inventadas.',
  record: 'registro',
  sharedRecord: 'el PostgreSQL de DATABASE_URL',
  howToStop: 'Ctrl-C lo detiene.',
  noAccounts: 'Aquí nadie tiene que entrar: puede actuar quien esté ante este equipo.',
  firstOwner:
    'Nadie entra aún en este registro, y más allá de este equipo no se abre a nadie antes de que alguien entre. La cuenta de su titular se crea aquí, ahora (titular, clínico y supervisor; una línea vacía lo deja).',
  firstOwnerName: 'Nombre, como lo dirán las historias:',
  firstOwnerSignIn: 'Nombre con el que entrar:',
  firstOwnerMade: 'Se está creando la cuenta; espere un momento.',
  newPassPhrase: (f, say) =>
    `Una primera frase de contraseña de ${say.short(f.phraseAtLeast)} caracteres o más, que su usuario cambiará la primera vez que entre:`,
  passPhraseAgain: 'La misma otra vez:',
  closed: 'cerrada',
  accountAdd: (f) => `${f.name} puede entrar como ${f.signIn}.`,
  accountRoles: (f) => `Se cambió lo que puede hacer ${f.name} (${f.signIn}).`,
  accountPassPhrase: (f) =>
    `${f.name} (${f.signIn}) entra con la nueva frase de contraseña y después elige otra; se cerró la sesión en todos los dispositivos.`,
  accountClose: (f) => `${f.name} (${f.signIn}) ya no puede entrar; lo que registró se conserva.`,
  accountReopen: (f) => `${f.name} puede entrar de nuevo como ${f.signIn}.`,
  backedUp: (f, say) =>
    `${say.counted(f.entries, ENTRIES)} de ${say.counted(f.persons, PERSONS)}, escritas y comprobadas`,
  unvouched: (f, say) =>
    `${f.file}: escrito, y ${say.counted(f.entries, ENTRIES)} que contiene no se pueden leer con este programa, así que una restauración lo rechazaría. Conserve el registro; el programa que las escribió quizá las lea.`,
  unreadableEntry: (f) => `la entrada ${f.id} (${f.kind}) no se puede leer: ${f.place}`,
  leftOut: (f, say) =>
    `${say.counted(f.entries, ENTRIES)} de esta persona no se pueden leer con este programa y quedan fuera de la tabla; evenfall check las lista.`,
  nothingWritten:
    'No se ha escrito nada: una tabla necesita un valor o una lectura de una serie, un texto una ronda firmada o una serie, y esta persona no tiene ninguna.',
  restored: (f, say) => `${say.counted(f.entries, ENTRIES)} de ${say.counted(f.persons, PERSONS)}, repuestas`,
  brought: (f, say) =>
    `${say.counted(f.added, { one: 'entrada añadida', other: 'entradas añadidas' })}, ${say.short(f.already)} ya estaban`,
  olderValues: (f, say) =>
    `Se dejan como están: ${say.counted(f.values, VALUES)} que la misma fuente dijo después de otra manera, y así constan`,
  unclearValues: (f, say) =>
    `Se guardan junto a otros que su fuente llama igual, pues no se sabe si uno corrige a otro, ${say.counted(f.values, VALUES)}:`,
  passedOver: (f) => `Se pasaron por alto, pues no contienen ningún valor: ${f.resources}`,
  refusedOf: (f, say) => `${say.counted(f.problems, PROBLEMS)}, y el resto se guarda:`,
  checked: (f, say) =>
    `${say.counted(f.values, VALUES)} en ${say.counted(f.entries, ENTRIES)}, calculados de nuevo`,
  nothingDiffers: 'Nada difiere.',
  differs: (f, say) => `${say.counted(f.findings, FINDINGS)}:`,
  changed: 'cambió desde que se guardó',
  unreadable: 'no se puede leer',
  'rests-on-unreadable': 'se apoya en una entrada de su ronda que no se puede leer',
  'names-another': 'nombra una entrada que no es de su persona, su ronda y su signo',
  'unknown-rule': 'hecho con una regla que este programa no conoce',
  'unknown-protocol': 'hecho con un protocolo que no se conserva aquí',
  'impossible-evidence': 'su evidencia no puede ser',
  differing: 'su evidencia da otro valor',
  milliseconds: (f, say) => `${say.number(f.ms)} ms`,
};

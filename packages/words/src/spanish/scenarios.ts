import type { scenarioLessons as english } from '../english/scenarios.js';
import type { Reworded } from '../reworded.js';

/** Como en `english/scenarios`. */
export const scenarioLessons: Reworded<typeof english> = {
  scenarioLesson: {
    'quiet-morning': 'La primera lectura suele ser más alta que las siguientes: tome otra antes de creerla.',
    'long-runner':
      'Un pulso lento que se acelera con cada inspiración es irregular y normal. Con pocos latidos por minuto desinfle despacio: un latido es un paso largo.',
    'stiff-pipe':
      'Los ruidos empiezan arriba, callan un tramo y vuelven: lo que se palpa antes muestra que el primer ruido tras el silencio no es el primero de todos.',
    'hidden-shelf':
      'Si se infla demasiado poco, el borde inferior del tramo mudo parece la sistólica: un error de cincuenta.',
    'white-corridor':
      'Una persona desconocida junto a la cama puede subirla mucho. Espere, repita y pida lecturas de casa.',
    'calm-here-not-there': 'Normal aquí y alta en casa: solo lo muestran las lecturas de casa.',
    'leaves-in-wind':
      'Del todo irregular: no hay dos latidos iguales. Cuente un minuto entero, tome tres lecturas y diga que era irregular.',
    'storm-of-leaves':
      'Muchos latidos son demasiado débiles para llegar a la muñeca: allí se cuentan menos de los que da el corazón. Escuche en el ápex un minuto entero e informe de los dos.',
    'two-by-two':
      'Uno de cada dos latidos es débil. La muñeca cuenta la mitad de lo que se oye en el ápex, y más abajo los ruidos vienen el doble de rápido.',
    'missed-step': 'Tras una pausa llega un latido fuerte. Uno solo no es todavía el primer ruido.',
    'strong-weak':
      'A intervalos iguales, fuerte y débil por turnos: al bajar el manguito los ruidos se duplican. Dígalo.',
    'tight-chest':
      'Los primeros ruidos solo vienen al espirar. Desinfle muy despacio y anote dónde vienen con cada latido.',
    'tight-sac':
      'Ruidos débiles que se pierden con cada inspiración y un pulso rápido: no puede esperar. Avise ahora.',
    'open-gate': 'Los ruidos siguen hasta el final. Escriba tres números: primero, apagado, último.',
    'slow-hill':
      'Un pulso que sube despacio es débil bajo los dedos y da ruidos suaves. Dígalo; un lugar tranquilo y una mano ligera los encuentran.',
    'second-trimester':
      'En el embarazo cuenta el último ruido. El apagamiento a menudo no se oye, y los ruidos pueden seguir.',
    'third-trimester-alarm': 'Tan alta en el embarazo no puede esperar: repita en minutos y avise ahora.',
    playground:
      'Un niño necesita un manguito infantil. Los ruidos pueden bajar mucho: escriba también dónde se apagan.',
    'wide-sleeve': 'Mida el brazo. Un manguito normal en un brazo tan ancho lee casi veinte de más.',
    'thin-sleeve': 'Mida el brazo. Un manguito normal en un brazo tan delgado lee de menos.',
    'cold-hands': 'Tan débil que el oído no basta. Palpe el pulso, diga que lo hizo así y avise ahora.',
    'warm-flush':
      'Manos calientes, pulso saltón y diastólica baja con respiración rápida: un aviso temprano. Avise ahora.',
    'deep-and-fast':
      'Mire lo profundas que son las respiraciones, no solo cuántas. Profundas y rápidas son un signo por sí mismas.',
    tide: 'La respiración crece, mengua y se detiene por turnos. Medio minuto puede dar cuatro o veintidós: cuente un minuto entero.',
    'broken-clock':
      'Respiración irregular, pulso lento y presión alta a la vez: una emergencia. Avise ahora.',
    'sleepy-six': 'Seis respiraciones superficiales por minuto: cuente un minuto entero y actúe enseguida.',
    'up-too-fast': 'Acostado está bien, de pie cae. Mida al minuto y a los tres minutos de estar de pie.',
    'two-arms': 'Los brazos difieren. Mida los dos en la primera visita y siga con el más alto.',
    'slow-bell': 'Treinta y seis latidos por minuto: no desinfle más de 2 mmHg por latido.',
    'racing-warm':
      'Rápido, caliente y saltón: los ruidos siguen muy por debajo de la diastólica. Escriba dónde se apagan.',
    'fever-ward': 'La fiebre acelera el pulso. Anótelo con la temperatura y vuelva para ver la tendencia.',
    unheralded:
      'Muy alta y sin síntomas. Repítala, confírmela en el otro brazo y actúe según las reglas de su lugar.',
    'noisy-bay':
      'Con ruido se pierden los primeros ruidos suaves y los últimos: demasiado baja y demasiado alta. Busque un lugar más tranquilo, o palpe.',
    'bad-hose': 'La aguja no reposa en cero y el manguito pierde aire. Mire primero el instrumento.',
    'feverish-toddler': 'Calme primero al niño. Con llanto todo va más rápido; cuente un minuto entero.',
    'calm-after-stairs':
      'Tras la escalera, los primeros minutos dan cifras altas. Cinco minutos tranquilos bajan la presión: deje primero que se siente.',
  },
};

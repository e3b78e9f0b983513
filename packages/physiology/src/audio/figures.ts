import { figures } from '@evenfall/clinical';

const RECIPE = 'physiology handbook 13: a choice of the book, no publication behind it';
const OWN = 'no source: decision of this project';
const decision = (value: number, unit: string, meaning: string, source: string = RECIPE) =>
  ({ value, unit, meaning, source, sure: 'decision' }) as const;

/** Every number of how the sounds are made audible. Levels in dBFS are of the highest sample unless they say RMS. */
export const AUDIO_FIGURES = figures({
  thresholdDbfs: decision(-52, 'dBFS', 'a sound of 0 dB; one of 40 dB is at -12'),
  loudestDbfs: decision(-1, 'dBFS', 'no sound is louder, however strong the pulse', OWN),
  softestDb: decision(
    -40,
    'dB',
    'a softer one is under the last bit of a file of 16 bits: it is left out',
    OWN,
  ),

  tapAttackLeastMs: decision(2, 'ms', 'how fast a tap begins, at least'),
  tapAttackMostMs: decision(3, 'ms', 'and at most'),
  tapDecayLeastMs: decision(10, 'ms', 'how fast a tap fades, at least (time to 1/e)'),
  tapDecayMostMs: decision(14, 'ms', 'and at most'),
  pistolDecayMs: decision(8, 'ms', 'how fast a pistol shot fades'),
  decayJitter: decision(0.03, 'share', 'how much that differs from beat to beat, SD'),
  tapNoise: decision(0.5, 'share', 'RMS of the noise of a tap beside the top of its tone', OWN),
  clickFirstFromHz: decision(300, 'Hz', 'click of phase I, lowest centre'),
  clickFirstToHz: decision(500, 'Hz', 'and highest'),
  clickCrispFromHz: decision(400, 'Hz', 'click of phase III, lowest centre'),
  clickCrispToHz: decision(700, 'Hz', 'and highest'),
  clickQuality: decision(0.8, 'ratio', 'width of the band of a click'),
  clickAttackMs: decision(1, 'ms', 'how fast a click begins'),
  clickDecayMs: decision(5, 'ms', 'how fast it fades'),
  swishFromHz: decision(450, 'Hz', 'where the swish of phase II begins'),
  swishToHz: decision(250, 'Hz', 'where it ends'),
  swishQuality: decision(0.7, 'ratio', 'width of its band'),
  swishLowHz: decision(200, 'Hz', 'nothing of it below', 'physiology handbook 8.3: a choice of the book'),
  swishHighHz: decision(600, 'Hz', 'nothing of it above', 'physiology handbook 8.3: a choice of the book'),
  swishDelayMs: decision(20, 'ms', 'how long after the tap it comes'),
  swishAttackMs: decision(20, 'ms', 'how fast it rises'),
  swishHoldLeastMs: decision(40, 'ms', 'how long the shortest stays'),
  swishHoldMostMs: decision(60, 'ms', 'how long the longest stays'),
  swishReleaseMs: decision(45, 'ms', 'how fast it fades'),
  muffledAttackMs: decision(8, 'ms', 'how fast a muffled sound begins'),
  muffledLowPassHz: decision(120, 'Hz', 'nothing of it above'),
  muffledNoise: decision(0.5, 'share', 'RMS of its noise beside the top of its tone', OWN),

  firstAttackMs: decision(10, 'ms', 'how fast the first heart sound begins', OWN),
  firstLowPassHz: decision(140, 'Hz', 'nothing of it above (10 to 140: from memory)', OWN),
  secondAttackMs: decision(6, 'ms', 'how fast the second one begins', OWN),
  secondLowPassHz: decision(200, 'Hz', 'nothing of it above (10 to 200: from memory)', OWN),
  heartNoise: decision(0.35, 'share', 'RMS of the noise of either beside the top of its tone', OWN),

  lowHz: decision(30, 'Hz', 'a stethoscope passes nothing below'),
  resonanceHz: decision(100, 'Hz', 'where it sounds along'),
  resonanceDb: decision(6, 'dB', 'how much louder it makes that'),
  highHz: decision(900, 'Hz', 'and nothing above'),
  bellDb: decision(3, 'dB', 'a bell makes the low end louder'),
  diaphragmDb: decision(-4, 'dB', 'a diaphragm makes it softer'),
  shelfHz: decision(120, 'Hz', 'the low end ends here'),

  loudspeakerShift: decision(2.2, 'ratio', 'small speakers play nothing low: every centre so much higher'),
  secondDb: decision(-6, 'dB', 'second harmonic of the loudspeaker voice', OWN),
  thirdDb: decision(-10, 'dB', 'third harmonic of it', OWN),

  putOnDbfs: decision(-20, 'dBFS', 'thump of a chest piece that is put on', OWN),
  putOnHz: decision(70, 'Hz', 'centre of that thump', OWN),
  takenOffDbfs: decision(-26, 'dBFS', 'thump of one that is taken off', OWN),
  takenOffHz: decision(110, 'Hz', 'centre of that', OWN),
  frictionDbfs: decision(-30, 'dBFS', 'skin under a chest piece that moves', OWN),
  frictionHz: decision(420, 'Hz', 'centre of that', OWN),
  knockDbfs: decision(-24, 'dBFS', 'tube knocked by the bulb', OWN),
  knockHz: decision(230, 'Hz', 'centre of that', OWN),

  pulseTapDbfs: decision(-30, 'dBFS', 'a usual pulse under the finger, where it is wanted heard: soft', OWN),
  pulseTapHz: decision(80, 'Hz', 'centre of that tap', OWN),
  pulseTapAttackMs: decision(10, 'ms', 'how fast it begins', OWN),
  pulseTapDecayMs: decision(30, 'ms', 'how fast it fades', OWN),

  roomAtSixtyDbfs: decision(
    -70,
    'dBFS RMS',
    'a room of 60 dB(A), which hides nothing yet; 1 dB for each dB(A) more or less',
    OWN,
  ),
  pumpFromHz: decision(1000, 'Hz', 'hiss of the bulb, from'),
  pumpToHz: decision(4000, 'Hz', 'to'),
  valveFromHz: decision(1800, 'Hz', 'whisper of the valve, from', OWN),
  valveToHz: decision(5000, 'Hz', 'to', OWN),
  pumpDbfs: decision(-58, 'dBFS RMS', 'hiss at 1 mL/s; its amplitude goes with the root of the flow', OWN),
  valveDbfs: decision(-68, 'dBFS RMS', 'whisper at 1 mL/s; the same', OWN),
  cuffMlPerMmHg: {
    value: 0.86,
    unit: 'mL/mmHg',
    meaning: 'air that an adult cuff takes, where only its pressure is known',
    source: 'physiology handbook 15: gas compliance at 100 mmHg',
    sure: 'derived',
  },

  breathFromHz: decision(150, 'Hz', 'breath at the chest, from'),
  breathToHz: decision(600, 'Hz', 'to'),
  breathDbfs: decision(-30, 'dBFS', 'breathing in at a usual depth', OWN),
  breathAtOneMetreDbfs: decision(
    -40,
    'dBFS',
    'the same of somebody who wheezes or breathes deep and fast, heard across a table with free ears',
    OWN,
  ),
  breathOutDb: decision(-8, 'dB', 'breathing out beside it', OWN),
  wheezeHz: decision(400, 'Hz', 'a wheeze'),
  wheezeDb: decision(-4, 'dB', 'a wheeze beside breathing in', OWN),

  overSystolicMmHg: {
    value: 30,
    unit: 'mmHg',
    meaning: 'a let-down to listen to begins so far over the systolic, at the next ten: no gap is missed',
    source:
      'physiology handbook 8.5: inflated to 20 or 30 over the palpated systolic nobody starts within a gap',
    sure: 'derived',
  },
  underDiastolicMmHg: decision(20, 'mmHg', 'and ends so far under the diastolic: it was the last sound', OWN),
  pumpedMmHgPerSecond: decision(25, 'mmHg/s', 'how fast the cuff is pumped up before it', OWN),

  startAt: decision(0.25, 'share', 'how loud the player is before anybody turns it up: start low', OWN),
  warnFrom: decision(0.6, 'share', 'louder than this it is said to turn down first', OWN),
  lookAheadSeconds: decision(
    0.15,
    's',
    'sounds are handed to the audio clock so long before they are due (0.1 to 0.2)',
  ),
});

import { APEX_FIGURES } from './apex/figures.js';
import { AUDIO_FIGURES } from './audio/figures.js';
import { BREATHING_FIGURES } from './breathing/figures.js';
import { CIRCUMSTANCE_FIGURES } from './circumstances/figures.js';
import { CUFF_FIGURES } from './cuff/figures.js';
import { HEART_FIGURES } from './heart/figures.js';
import { PERSON_FIGURES } from './person/figures.js';
import { SLOW_FIGURES } from './slow/figures.js';
import { SOUND_FIGURES } from './sound/figures.js';

/** Every number of the simulated person by folder, for the page of sources. */
export const PHYSIOLOGY_FIGURES = {
  person: PERSON_FIGURES,
  heart: HEART_FIGURES,
  breathing: BREATHING_FIGURES,
  slow: SLOW_FIGURES,
  circumstances: CIRCUMSTANCE_FIGURES,
  cuff: CUFF_FIGURES,
  sound: SOUND_FIGURES,
  audio: AUDIO_FIGURES,
  apex: APEX_FIGURES,
};

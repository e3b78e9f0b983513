import { DEFLATION_FIGURES } from '@evenfall/clinical';

/** What is not told apart on a gauge is not told of, mmHg: half a mark of the usual one. */
export const WORTH_TELLING_MMHG = DEFLATION_FIGURES.gaugeStepMmHg.value / 2;

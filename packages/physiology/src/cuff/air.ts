import { exp } from '../exact/exponential.js';
import { BLADDER_VOLUMES, CUFF_FIGURES as F } from './figures.js';
import type { Bladder } from './instrument.js';

const ATMOSPHERE = F.airMmHg.value;
const AT_FULL = 1 - exp(-F.fillAtMmHg.value / F.fillScaleMmHg.value);

/** The air in a bladder and its tubes. Amounts are mL at atmospheric pressure. Source: physiology handbook 6.1. */
export class Air {
  private readonly empty: number;
  private readonly stretch: number;

  constructor(bladder: Bladder, isLoose: boolean) {
    const [empty, full] = BLADDER_VOLUMES[bladder];
    this.empty = empty;
    this.stretch = (full * (isLoose ? F.looseShare.value : 1) - empty) / AT_FULL;
  }

  /** Amount of air at a pressure. */
  amountAt(mmHg: number): number {
    const volume = this.empty + this.stretch * (1 - exp(-mmHg / F.fillScaleMmHg.value)) + F.tubesMl.value;
    return (volume * (ATMOSPHERE + mmHg)) / ATMOSPHERE;
  }

  /** mL of air for one mmHg more. */
  complianceAt(mmHg: number): number {
    const filled = exp(-mmHg / F.fillScaleMmHg.value);
    const volume = this.empty + this.stretch * (1 - filled) + F.tubesMl.value;
    return (volume + (this.stretch * filled * (ATMOSPHERE + mmHg)) / F.fillScaleMmHg.value) / ATMOSPHERE;
  }
}

import {
  type Circumstances,
  type Gap,
  type Levels,
  type Person,
  PHYSIOLOGY_FIGURES,
} from '@evenfall/physiology';

/** A gap goes with the pressure of the visit; an arm that was raised before shortens it. Source: physiology handbook 8.5. */
export function gapIn({ gap, rest }: Person, { wasArmRaised }: Circumstances, sounding: Levels): Gap | null {
  if (gap === null) return null;
  const topMmHg = gap.topMmHg + sounding.systolic - rest.systolic;
  const share = wasArmRaised ? PHYSIOLOGY_FIGURES.sound.gapRaisedShare.value : 1;
  return { topMmHg, bottomMmHg: topMmHg - (gap.topMmHg - gap.bottomMmHg) * share };
}

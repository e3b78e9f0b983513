import type { Kept } from '../store/kept.js';
import type { Known } from '../store/known.js';

type Here = { readonly kept: Pick<Kept, 'learners'>; readonly known: Pick<Known, 'agents'> };

/** Who said on this device that they are learning, and whom the place knows as learners. */
export function knownLearners({ kept, known }: Here): readonly string[] {
  const there = known.agents.value ?? [];
  return [...(kept.learners ?? []), ...there.flatMap(({ id, isLearning }) => (isLearning ? [id] : []))];
}

/** Whether somebody is taken for a learner until they say otherwise. */
export function isKnownLearner(agent: string | null, here: Here): boolean {
  return agent !== null && knownLearners(here).includes(agent);
}

/** Who measures said that they are learning, or that they are not. */
export function withLearner(kept: Kept, agent: string | null, isLearner: boolean): Kept {
  const others = (kept.learners ?? []).filter((one) => one !== agent);
  return { ...kept, learners: isLearner && agent !== null ? [...others, agent] : others };
}

import { exp } from '../exact/exponential.js';
import { HEART_FIGURES as F } from './figures.js';

const RANGE = F.couplingHigh.value - F.couplingLow.value;

/** Where a premature beat stands between the least and the most coupling, 0 to 1. */
export function couplingPlace(coupling: number): number {
  const place = (coupling - F.couplingLow.value) / RANGE;
  return place < 0 ? 0 : Math.min(place, 1);
}

/** Filling of a ventricle after an interval, seconds: 0 when there was no time, 1 after a very long one. */
export function filling(interval: number, fromSeconds: number): number {
  const time = interval - fromSeconds;
  return time <= 0 ? 0 : 1 - exp(-time / F.fillingSeconds.value);
}

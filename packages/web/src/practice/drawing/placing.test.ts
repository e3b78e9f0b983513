import { expect, test } from 'vitest';
import { ARM, armPlaceOf, arteryY, feltAt, heldAt, mirrored, PIECE_RADIUS, VIEW, within } from './placing.js';

// Decisions of this project; what being off or under the cuff does to the sound is tested in physiology.
const artery = arteryY(5);

test('on the artery it lies well, beside it it is off by so many mm', () => {
  const laid = (y: number) => heldAt({ x: ARM.elbowX, y, isPressed: false }, artery);
  expect(laid(artery)).toEqual({ offMm: 0, held: 'light' });
  expect(laid(artery + 4).offMm).toBe(0);
  expect(laid(artery + 10).offMm).toBeCloseTo(7, 6);
  expect(laid(artery - 20).offMm).toBeCloseTo(14, 6);
});

test('over the edge of the cuff by more than a third it is under it, however it is held', () => {
  const edge = ARM.cuffEndsX - 6 + PIECE_RADIUS;
  const held = (x: number, isPressed = false) => heldAt({ x, y: artery, isPressed }, artery).held;
  expect(held(edge)).toBe('light');
  expect(held(edge - 1)).toBe('under-cuff');
  expect(held(edge - 1, true)).toBe('under-cuff');
  expect(held(edge, true)).toBe('pressed-hard');
});

test('a finger feels it best on it, and nothing a thumb away', () => {
  expect(feltAt({ x: ARM.elbowX, y: artery }, artery)).toBe(1);
  expect(feltAt({ x: ARM.elbowX, y: artery + 12 }, artery)).toBeLessThan(0.6);
  expect(feltAt({ x: ARM.elbowX, y: artery + 40 }, artery)).toBeLessThan(0.01);
});

test('each person’s lies a little elsewhere, always where it can be reached', () => {
  const all = Array.from({ length: 200 }, (_, seed) => arteryY(seed));
  expect(new Set(all).size).toBeGreaterThan(190);
  for (const y of all) expect(within({ x: ARM.elbowX, y })).toEqual({ x: ARM.elbowX, y });
});

test('a finger on the picture of the left arm is where it is on the mirrored right one', () => {
  const box = { left: 10, top: 20, width: VIEW.width / 2, height: VIEW.height / 2 };
  const [x, y] = [ARM.elbowX, 130];
  const at = (px: number) => ({
    clientX: box.left + (px - VIEW.x) / 2,
    clientY: box.top + (y - VIEW.y) / 2,
  });
  expect(armPlaceOf(at(x), box, false)).toEqual({ x, y });
  expect(armPlaceOf(at(mirrored(x, true)), box, true)).toEqual({ x, y });
  // Where the elbow of the one is, there is nothing of the other: the nearest place that can be reached.
  expect(armPlaceOf(at(x), box, true).x).toBe(ARM.field.right);
  expect(mirrored(mirrored(77, true), true)).toBe(77);
});

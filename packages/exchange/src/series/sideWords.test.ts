import { expect, test } from 'vitest';
import { sideOf } from './sideWords.js';

// The words of each language and what is short for them: common practice, no source.
test.each([
  ['left', 'left'],
  ['L', 'left'],
  ['LA', 'left'],
  ['l. arm', null],
  ['left arm', 'left'],
  ['Left upper arm', 'left'],
  ['arm, left', 'left'],
  ['arm_left', 'left'],
  ['brazo izquierdo', 'left'],
  ['izq.', 'left'],
  ['Izquierdo', 'left'],
  ['BI', 'left'],
  ['bras gauche', 'left'],
  ['linker Arm', 'left'],
  ['braccio sinistro', 'left'],
  ['الذراع الأيسر', 'left'],
  ['זרוע שמאל', 'left'],
  ['right', 'right'],
  ['RA', 'right'],
  ['Right wrist', 'right'],
  ['la derecha', 'right'],
  ['brazo derecho', 'right'],
  ['BD', 'right'],
  ['brazo der.', 'right'],
  ['bras droit', 'right'],
  ['rechter Oberarm', 'right'],
  ['الذراع الأيمن', 'right'],
  ['זרוע ימין', 'right'],
  // Words that name no side, both, or hold the letters of one.
  ['upper-arm', null],
  ['arm', null],
  ['both', null],
  ['left and right', null],
  ['right-handed, left', null],
  ['bright', null],
  ['larm', null],
  ['sin dato', null],
  ['der Oberarm', null],
  ['constructor', null],
  ['', null],
] as const)('%j names %s', (cell, side) => {
  expect(sideOf(cell)).toBe(side);
});

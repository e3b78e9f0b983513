import { expect, test } from 'vitest';
import { shapley } from './shapley.js';

// The glove game, from textbooks of game theory (from memory): one left glove and two right ones; a pair is worth 1.
test('the glove game: 2/3 for the left glove, 1/6 for each right one', () => {
  const pair = (set: number) => (set % 2 === 1 && set > 1 ? 1 : 0);
  const shares = shapley(3, pair);
  expect(shares[0]).toBeCloseTo(2 / 3, 12);
  expect(shares[1]).toBeCloseTo(1 / 6, 12);
  expect(shares[2]).toBeCloseTo(1 / 6, 12);
});

// The airport game (Littlechild and Owen 1973, from memory): costs 8, 11, 13, 18 share as 2, 3, 4, 9.
test('the airport game', () => {
  const needs = [8, 11, 13, 18];
  const cost = (set: number) => Math.max(0, ...needs.filter((_, i) => (set >> i) % 2 === 1));
  shapley(4, cost).forEach((share, i) => {
    expect(share).toBeCloseTo([2, 3, 4, 9][i] as number, 12);
  });
});

test('what only adds up is shared as it is, and nobody is nothing', () => {
  expect(shapley(0, () => 5)).toEqual([]);
  const worth = [3, -2, 0.5];
  const sum = (set: number) => worth.reduce((all, one, i) => all + ((set >> i) % 2) * one, 0);
  shapley(3, sum).forEach((share, i) => {
    expect(share).toBeCloseTo(worth[i] as number, 12);
  });
});

// The airport game again with more players than are shared out exactly: each step is shared by those who need it (by hand).
test('more players than are shared out exactly come near it', () => {
  const needs = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  const cost = (set: number) => Math.max(0, ...needs.filter((_, i) => (set >> i) % 2 === 1));
  let fair = 0;
  shapley(10, cost).forEach((share, i) => {
    fair += 1 / (10 - i);
    expect(Math.abs(share - fair)).toBeLessThan(0.7);
  });
});

test.each([8, 9, 14])('%d players: shares sum to what all together add', (players) => {
  const value = (set: number) => Math.sqrt(set) + (set % 7);
  const sum = shapley(players, value).reduce((all, one) => all + one, 0);
  expect(sum).toBeCloseTo(value(2 ** players - 1) - value(0), 8);
});

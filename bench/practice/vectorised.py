# The simulated let-down as somebody would write it with a general-purpose array library: all runs side by side, one loop
# over beats. The same model (physiology handbook 2.1, 3.1, 5, 8.2, 9): breath, slow wave and five slow courses in the
# interval, breath, slow wave, slow course and noise in the pressure, rise of the pulse to the cuff, loudness of a sound,
# the first of two sounds and the last one, reaction, gauge lag, nearest mark.
#
#   python3 vectorised.py RUNS CHUNK FILE   FILE: JSON of the person and its contour
import json
import resource
import sys
import time

import numpy as np

RUNS, CHUNK = int(sys.argv[1]), int(sys.argv[2])
P = json.load(open(sys.argv[3]))
RISE_AT = np.asarray(P["riseHeights"])
RISE = np.asarray(P["riseSeconds"])
TAUS = np.array([5.0, 15.0, 45.0, 135.0, 405.0])


def let_down(rng, n):
    usual = 60.0 / P["pulse"]
    t = -usual + usual * rng.random(n)
    turns = rng.random(n)
    breath_len = 60.0 / P["breaths"] * np.exp(0.18 * rng.standard_normal(n))
    breath_from = t - turns * breath_len
    depth = np.exp(0.3 * rng.standard_normal(n))
    slow_phase = rng.random(n)
    wander = rng.standard_normal((5, n))
    pressure = rng.standard_normal(n)
    phase_wander = rng.standard_normal(n)
    felt_at = np.full(n, np.nan)
    muffled_at = np.full(n, np.nan)
    last_rr = np.full(n, usual)
    first_at = np.full(n, np.nan)
    first_cuff = np.full(n, np.nan)
    last_at = np.full(n, np.nan)
    heard_before = np.full(n, -9)
    before_at = np.zeros(n)
    start, peak, rate = P["startSeconds"], P["peakMmHg"], P["fall"]
    end = start + (peak - P["diastolic"] + 25) / rate
    k = 0
    while True:
        phase = np.clip((t - breath_from) / breath_len, 0, 1)
        slow_turns = 0.1 * t + slow_phase + P["wanderTurns"] * phase_wander
        rr = (
            usual
            + P["breathSeconds"] * np.minimum(depth, 2.5) * np.cos(2 * np.pi * phase)
            + P["slowSeconds"] * np.sin(2 * np.pi * slow_turns)
            + P["driftSeconds"] * wander.sum(axis=0) / np.sqrt(5)
        )
        rr = np.maximum(0.33, np.clip(rr, last_rr * 0.85, last_rr * 1.15))
        last_rr = rr
        t = t + rr
        foot = t + P["delaySeconds"]
        decay = np.exp(-rr / TAUS[:, None])
        wander = wander * decay + np.sqrt(1 - decay**2) * rng.standard_normal((5, n))
        decay = np.exp(-rr / 60.0)
        pressure = pressure * decay + np.sqrt(1 - decay**2) * rng.standard_normal(n)
        decay = np.exp(-rr / P["wanderSeconds"])
        phase_wander = phase_wander * decay + np.sqrt(1 - decay**2) * rng.standard_normal(n)
        over = foot >= breath_from + breath_len
        breath_from = np.where(over, breath_from + breath_len, breath_from)
        breath_len = np.where(over, 60.0 / P["breaths"] * np.exp(0.18 * rng.standard_normal(n)), breath_len)
        depth = np.where(over, np.exp(0.3 * rng.standard_normal(n)), depth)
        phase = np.clip((foot - breath_from) / breath_len, 0, 1)
        breath = 0.5 * P["swing"] * np.minimum(depth, 2) * np.cos(2 * np.pi * phase)
        slow = -P["slowWave"] * np.sin(2 * np.pi * (slow_turns + 0.1 * rr - 0.35)) + P["slowSd"] * pressure
        s = P["systolic"] + breath + slow + P["beatSd"] * rng.standard_normal(n)
        d = P["diastolic"] + 0.35 * breath + 0.6 * slow + P["beatDiastolicSd"] * rng.standard_normal(n)
        if foot.min() > end:
            break
        stretch = np.sqrt(np.minimum(rr, 1.5) / 0.857)
        after = np.full(n, 0.1)
        for _ in range(4):
            cuff = peak - rate * (foot + after - start)
            height = np.clip((cuff - d) / (s - d), 0, 1)
            after = np.interp(height, RISE_AT, RISE) * stretch
        at = foot + after
        cuff = peak - rate * (at - start)
        live = (foot >= start) & (cuff < s) & (cuff > d)
        with np.errstate(over="ignore"):
            shape = (1 - np.exp(-np.maximum(s - cuff, 0) / 1.8)) * (1 - np.exp(-np.maximum(cuff - d, 0) / 4.4))
        level = P["soundDb"] * shape + 0.25 * (s - P["systolic"]) * shape + 1.2 * rng.standard_normal(n)
        place = (cuff - d) / (s - d)
        level = np.where((place <= 0.75) & (place > 0.5) & P["hasSwish"], level + P["swishDb"], level)
        felt = (foot >= start) & (s - cuff >= P["feelingMmHg"])
        felt_at = np.where(np.isnan(felt_at) & felt, at + 0.05, felt_at)
        heard = live & (level >= 0)
        is_muffled = cuff - d <= P["muffledAbove"]
        muffled_at = np.where(heard, np.where(is_muffled, np.where(np.isnan(muffled_at), at, muffled_at), np.nan), muffled_at)
        pair = heard & np.isnan(first_at) & (k - heard_before <= 2)
        first_at = np.where(pair, before_at, first_at)
        last_at = np.where(heard, at, last_at)
        before_at = np.where(heard, at, before_at)
        heard_before = np.where(heard, k, heard_before)
        k += 1
    reaction = np.maximum(0, 0.2 + 0.05 * rng.standard_normal((2, n)))
    shown = peak - rate * (np.stack([first_at, last_at]) + reaction - 0.08 - start)
    return 2 * np.round(shown / 2)


rng = np.random.default_rng(1)
began = time.process_time()
sums = np.zeros(2)
for done in range(0, RUNS, CHUNK):
    sums += np.nansum(let_down(rng, min(CHUNK, RUNS - done)), axis=1)
seconds = time.process_time() - began
most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024
print(json.dumps({"runs": RUNS, "seconds": seconds, "mostBytes": most, "systolic": sums[0] / RUNS, "diastolic": sums[1] / RUNS}))

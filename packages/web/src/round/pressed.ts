import type { TapSource } from '@evenfall/clinical';
import type { KeyboardEvent, MouseEvent, PointerEvent } from 'react';

/**
 * Handlers that answer a press when it begins, by the event's own time stamp: a finger going down, a key going
 * down, or the press of an assistive tool, which arrives as a click without either.
 */
export function pressed(onPress: (atMs: number, source: TapSource) => void) {
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button === 0) onPress(event.timeStamp, 'touch');
    },
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== ' ' && event.key !== 'Enter') return;
      event.preventDefault();
      if (!event.repeat) onPress(event.timeStamp, 'key');
    },
    onClick: (event: MouseEvent) => {
      if (event.detail === 0) onPress(event.timeStamp, 'touch');
    },
  };
}

import type { Debrief } from '@evenfall/practice';
import { exerciseFigure } from '@evenfall/report';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { RUN_FIGURE, runDrawn } from './runFigure.js';

type LessonProps = { readonly result: Debrief & { readonly fall: NonNullable<Debrief['fall']> } };

/** The pressure inside the artery, in a lesson of its own: a reading is never held against it. Source: physiology handbook 1.1. */
export function ArteryLesson({ result }: LessonProps) {
  const { words } = useApp();
  const [isOpen, setOpen] = useState(false);
  const { systolic, diastolic } = result.truth.arterial;
  return (
    <details className="not-printed" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{words.sentence('debrief.artery')}</summary>
      {isOpen ? (
        <div className="debrief-lesson">
          <p>{words.sentence('debrief.arterySays', { systolic, diastolic })}</p>
          <FigureShown
            name="artery"
            draw={(how) =>
              exerciseFigure(runDrawn(result), words, { ...how, showsArtery: true, showsKey: false })
            }
            {...RUN_FIGURE}
          />
        </div>
      ) : null}
    </details>
  );
}

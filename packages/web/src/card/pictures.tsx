import type { ReactNode } from 'react';

/** The pictures of the preparation card, of our own drawing: what each is about stands in the accent's colour and in a thicker line. */
function Picture({ children }: { readonly children: ReactNode }) {
  return (
    <svg viewBox="0 0 120 120" className="card-picture" aria-hidden="true">
      {children}
    </svg>
  );
}

/** Somebody who sits at a table, seen from the side. */
function Sitting({ children }: { readonly children?: ReactNode }) {
  return (
    <Picture>
      <path d="M32 40 V80 H70 M34 80 V110 M68 80 V110" />
      <path d="M72 68 H114 M108 68 V110" />
      <circle cx="48" cy="24" r="10" />
      <path className="card-body" d="M45 40 L44 76 H78 V106 H90" />
      <path className="card-body" d="M46 46 L58 62 L88 64" />
      <path d="M6 111 H116" />
      {children}
    </Picture>
  );
}

/** What is not to be done is crossed out. */
function Crossed({ x }: { readonly x: number }) {
  return <path className="card-point" d={`M${x - 17} 97 L${x + 17} 43`} />;
}

/** Coffee, tobacco and exercise, each crossed out. */
export function BeforePicture() {
  return (
    <svg viewBox="0 0 240 120" className="card-picture card-picture-wide" aria-hidden="true">
      <path d="M22 62 H52 V80 Q52 92 37 92 Q22 92 22 80 Z M52 67 Q64 67 62 76 Q60 83 51 82" />
      <path d="M31 55 Q27 49 31 44 Q35 39 31 33 M43 55 Q39 49 43 44 Q47 39 43 33" />
      <path d="M92 74 H144 V83 H92 Z M134 74 V83" />
      <path d="M149 72 Q144 66 149 60 Q154 54 149 48" />
      <circle cx="204" cy="36" r="8" />
      <path
        className="card-body"
        d="M201 48 L194 72 L208 82 L203 100 M194 72 L186 88 L172 88 M200 53 L214 62 L222 54 M199 55 L186 58 L181 70"
      />
      <Crossed x={40} />
      <Crossed x={120} />
      <Crossed x={198} />
    </svg>
  );
}

export function ToiletPicture() {
  return (
    <Picture>
      <path d="M34 24 H56 V64 H34 Z" />
      <path className="card-point" d="M34 66 H92" />
      <path d="M38 66 Q40 90 58 94 L54 110 H80 L76 94 Q88 88 90 66" />
      <path d="M40 34 H46" />
      <path d="M24 111 H100" />
    </Picture>
  );
}

export function RestPicture({ minutes }: { readonly minutes: number }) {
  const angle = (minutes / 60) * 2 * Math.PI;
  const [x, y] = [60 + 40 * Math.sin(angle), 60 - 40 * Math.cos(angle)];
  const marks = Array.from({ length: 12 }, (_, hour) => (hour * Math.PI) / 6);
  return (
    <Picture>
      <circle cx="60" cy="60" r="48" />
      {marks.map((at) => (
        <path
          key={at}
          d={`M${60 + 42 * Math.sin(at)} ${60 - 42 * Math.cos(at)} L${60 + 46 * Math.sin(at)} ${60 - 46 * Math.cos(at)}`}
        />
      ))}
      <path className="card-sector" d={`M60 60 V20 A40 40 0 0 1 ${x} ${y} Z`} />
      <path className="card-point" d={`M60 20 V60 L${x} ${y}`} />
    </Picture>
  );
}

export function BackPicture() {
  return (
    <Sitting>
      <path className="card-point" d="M32 38 V80" />
      <path className="card-point card-thin" d="M8 58 H24 M18 52 L24 58 L18 64" />
    </Sitting>
  );
}

export function FeetPicture() {
  return (
    <Sitting>
      <path className="card-point" d="M78 82 V106 H92" />
      <path className="card-point" d="M70 111 H102" />
    </Sitting>
  );
}

export function ArmPicture() {
  return (
    <Sitting>
      <path className="card-point card-thin" d="M46 56 H116" strokeDasharray="4 4" />
      <path
        className="card-heart"
        d="M46 61 C39 55 38 50 42 48 C44 47 46 49 46 51 C46 49 48 47 50 48 C54 50 53 55 46 61 Z"
      />
      <path className="card-point" d="M58 62 L88 64" />
    </Sitting>
  );
}

export function BarePicture() {
  return (
    <Picture>
      <path d="M20 16 Q40 12 52 22 L62 44 L40 54 L30 40 V110" />
      <path className="card-body" d="M51 50 L68 82 L106 74" />
      <path d="M38 50 L60 40" />
      <path className="card-point" d="M54 72 L72 62 L78 74 L61 84 Z" />
      <path className="card-point card-thin" d="M34 66 Q32 56 40 58 M37 52 L41 58 L35 62" />
    </Picture>
  );
}

export function QuietPicture() {
  return (
    <Picture>
      <circle cx="42" cy="66" r="24" />
      <path className="card-body" d="M50 76 H62" />
      <circle cx="50" cy="60" r="1.5" />
      <path d="M76 22 H108 V46 H90 L80 56 V46 H76 Z M82 30 H102 M82 38 H96" />
      <path className="card-point" d="M72 58 L112 14" />
      <path d="M22 110 Q24 94 42 92 Q60 94 62 110" />
    </Picture>
  );
}

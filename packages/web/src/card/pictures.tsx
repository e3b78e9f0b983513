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
      <path className="card-point card-thin" d="M58 57 H116" strokeDasharray="4 5" />
      <path
        className="card-heart"
        d="M45 67 C35 59 34 51 39 49 C42 48 45 50 45 53 C45 50 48 48 51 49 C56 51 55 59 45 67 Z"
      />
      <path className="card-point" d="M58 62 L88 64" />
    </Sitting>
  );
}

export function BarePicture() {
  return (
    <Picture>
      <path d="M4 36 Q24 26 42 32 L46 80 Q24 86 4 76" />
      <path d="M36 32 L40 80" />
      <path d="M43 42 H92 Q98 42 102 46 L112 48 Q116 54 112 62 L102 64 Q98 68 92 68 H46" />
      <path className="card-point" d="M56 37 H80 V73 H56 Z" />
      <path className="card-point card-thin" d="M66 20 H36 M44 12 L36 20 L44 28" />
      <path d="M102 46 Q106 55 102 64" />
    </Picture>
  );
}

export function QuietPicture() {
  return (
    <Picture>
      <circle cx="42" cy="66" r="24" />
      <path d="M46 78 H58" />
      <circle cx="52" cy="60" r="1.5" />
      <path d="M76 22 H108 V46 H90 L80 56 V46 H76 Z M82 30 H102 M82 38 H96" />
      <path className="card-point" d="M72 58 L112 14" />
      <path d="M22 110 Q24 94 42 92 Q60 94 62 110" />
    </Picture>
  );
}

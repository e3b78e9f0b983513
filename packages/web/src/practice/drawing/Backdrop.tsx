/** The room itself: wall and floor, a window with its curtain, a plant, shelves with cuffs; a side room has its shut door in place of the window, a bay its curtain. */
export function Backdrop({
  isSideRoom = false,
  isBay = false,
}: {
  readonly isSideRoom?: boolean;
  readonly isBay?: boolean;
}) {
  return (
    <g>
      <path className="room-wall" d="M0 0 H480 V240 H0 Z" />
      <path className="room-floor" d="M0 240 H480 V300 H0 Z" />
      <path className="room-dado" d="M0 196 H480 V240 H0 Z" />
      <path className="scene-line scene-faint" d="M0 196 H480 M0 240 H480" />
      <path
        className="room-grain"
        d="M0 262 H480 M60 240 L20 300 M190 240 L176 300 M320 240 L334 300 M440 240 L476 300"
      />

      {isSideRoom ? <ShutDoor /> : isBay ? <Curtain /> : <Window />}

      {/* Cuffs on a shelf, a roll of tape, a jar. */}
      <g>
        <path className="scene-frame" d="M250 92 H372 V97 H250 Z" />
        <path
          className="scene-cuff room-still"
          d="M258 76 h26 a4 4 0 0 1 4 4 v12 h-34 v-12 a4 4 0 0 1 4 -4 Z"
        />
        <path
          className="scene-cuff room-still"
          d="M296 70 h32 a4 4 0 0 1 4 4 v18 h-40 v-18 a4 4 0 0 1 4 -4 Z"
        />
        <path className="scene-line scene-faint" d="M271 78 V92 M312 72 V92" />
        <circle className="room-roll" cx="352" cy="82" r="10" />
        <circle className="scene-frame" cx="352" cy="82" r="4" />
      </g>
    </g>
  );
}

/** A window, the sky in it, a curtain drawn aside, a plant on the sill. */
function Window() {
  return (
    <g>
      <rect className="room-sky" x="26" y="22" width="82" height="102" />
      <path className="room-hill" d="M26 104 C 44 92 60 96 74 102 C 88 108 98 100 108 96 V124 H26 Z" />
      <path className="scene-frame" d="M26 22 H108 V124 H26 Z M67 22 V124 M26 72 H108" />
      <path className="scene-frame" d="M18 126 H116 V131 H18 Z" />
      <path className="room-curtain" d="M12 14 H40 C 40 46 36 84 18 120 C 12 96 12 50 12 14 Z" />
      <path className="scene-line scene-faint" d="M20 16 C 22 50 20 84 16 108 M30 16 C 30 48 28 78 22 104" />
      <path className="scene-line" d="M8 14 H122" />
      {/* A plant on the sill. */}
      <path
        className="room-leaf"
        d="M98 112 C 92 100 86 98 82 100 C 86 104 92 108 97 114 Z M99 112 C 98 98 102 90 108 88 C 108 96 104 106 101 113 Z M100 113 C 106 104 112 102 117 104 C 113 109 106 112 102 115 Z"
      />
      <path className="room-pot" d="M91 114 H109 L106 127 H94 Z" />
    </g>
  );
}

/** The curtain of a bay, on its rail. */
function Curtain() {
  return (
    <g>
      <path className="scene-line" d="M0 16 H236" />
      <path className="room-curtain" d="M6 18 H92 C 90 90 94 160 90 232 C 62 238 34 238 6 232 Z" />
      <path
        className="scene-line scene-faint"
        d="M22 20 C 20 90 24 160 20 230 M40 20 C 42 90 38 160 40 232 M58 20 C 56 90 60 160 58 232 M76 20 C 78 90 74 160 76 230"
      />
    </g>
  );
}

/** The door of a side room, shut. */
function ShutDoor() {
  return (
    <g>
      <path className="scene-frame" d="M24 40 H104 V240 H24 Z" />
      <path className="scene-frame" d="M32 48 H96 V240 H32 Z" />
      <path className="scene-line scene-faint" d="M42 60 H86 V130 H42 Z M42 146 H86 V226 H42 Z" />
      <path className="scene-line" d="M86 138 H94" />
    </g>
  );
}

/** What stands ready on the table: the gauge on its foot with the hose, and the watch. */
export function OnTheTable() {
  return (
    <g>
      <path className="scene-frame" d="M404 193 h34 a2 2 0 0 1 2 4 h-38 a2 2 0 0 1 2 -4 Z" />
      <path className="scene-line" d="M421 193 V184" />
      <circle className="scene-face" cx="421" cy="166" r="19" />
      <path
        className="scene-line scene-faint"
        d="M408 177 L411 174 M404 166 H408 M408 155 L411 158 M421 149 V153 M434 155 L431 158 M438 166 H434 M434 177 L431 174"
      />
      <path className="scene-hand" d="M421 166 L412 175" />
      <path className="hose hose-thin" d="M402 188 C 388 198 376 190 352 192" />
    </g>
  );
}

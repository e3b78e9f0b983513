import type { Looks } from './looks.js';

/** The head from the side, looking to the right. */
export function Head({ looks, isTalking }: { readonly looks: Looks; readonly isTalking: boolean }) {
  return (
    <g>
      {looks.cut === 'long' ? (
        <path
          className="scene-hair"
          d="M150 40 C 138 62 140 92 150 108 C 160 112 168 106 166 96 C 160 84 158 66 166 50 Z"
        />
      ) : null}
      {looks.cut === 'tail' ? (
        <path
          className="scene-hair"
          d="M148 52 C 132 50 124 64 128 82 C 134 88 140 82 140 74 C 142 66 146 62 152 60 Z"
        />
      ) : null}
      {looks.cut === 'bun' ? <circle className="scene-hair" cx="143" cy="52" r="12" /> : null}
      <path className="scene-skin" d="M156 82 L158 106 L182 106 L181 88 Z" />
      <path
        className="scene-skin"
        d="M148 58 C 148 36 164 26 178 28 C 194 30 200 42 199 54 L206 67 C 206 70 203 71 200 71 L199.500 76 L200 80 C 200 87 194 90 185 89.500 C 162 89 148 78 148 58 Z"
      />
      {/* The ear. */}
      <path className="scene-line scene-ear" d="M168 62 C 163 58 163 70 168 72 C 170 73 172 70 171 67" />
      {looks.hasBeard ? (
        <path
          className="scene-hair"
          d="M166 76 C 166 88 174 96 188 95 C 197 94 202 88 201 82 C 196 85 190 86 186 82 C 180 80 172 82 170 74 Z"
        />
      ) : null}
      <HairTop cut={looks.cut} />
      <path className="scene-line" d="M186 49 C 189 47.500 192 47.500 194 48.500" />
      <circle className="scene-eye" cx="190.500" cy="56" r="1.900" />
      {looks.hasGlasses ? (
        <path className="scene-line scene-thin" d="M184 51 h12 v10 h-12 Z M184 55 L169 58" />
      ) : null}
      {isTalking ? (
        <path
          className="scene-mouth"
          d="M192 75.500 C 195 73.500 199 74 200 76 C 199 80 194 80.500 192 75.500 Z"
        />
      ) : (
        <path className="scene-line" d="M191.500 77.500 C 194 78.500 197 78.300 199 77.300" />
      )}
    </g>
  );
}

function HairTop({ cut }: Pick<Looks, 'cut'>) {
  if (cut === 'thin')
    return (
      <path
        className="scene-hair"
        d="M147 66 C 144 52 148 44 154 38 C 156 46 158 50 166 52 C 166 60 160 66 157 76 C 151 76 148 72 147 66 Z"
      />
    );
  return (
    <path
      className="scene-hair"
      d={
        cut === 'short'
          ? 'M146 66 C 138 40 154 18 180 20 C 196 21 204 32 202 42 C 186 40 170 44 168 58 C 166 66 160 70 156 80 C 150 77 147 72 146 66 Z'
          : 'M146 70 C 136 42 152 17 180 18 C 198 19 206 32 203 44 C 192 40 184 38 178 36 C 170 42 164 50 164 60 C 160 68 156 72 154 82 C 149 78 147 74 146 70 Z'
      }
    />
  );
}

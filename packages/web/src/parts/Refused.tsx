/** What kept something from being done, said beside the button that was pressed; nothing where nothing did. */
export function Refused({ text }: { readonly text: string | null }) {
  if (text === null) return null;
  return (
    <p className="notice" role="alert">
      {text}
    </p>
  );
}

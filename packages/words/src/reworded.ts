/** Keeps the keys and the figures of the first language and lets the words differ. */
export type Reworded<Text> = Text extends string
  ? string
  : Text extends (...parts: infer Parts) => string
    ? (...parts: Parts) => string
    : { readonly [Key in keyof Text]: Reworded<Text[Key]> };

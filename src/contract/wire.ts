/**
 * Holds the answers of the use-cases against the shapes on the wire when the program is compiled.
 */

/** The same shape with nothing in it that can be changed. */
export type Frozen<Shape> = Shape extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : Shape extends object
    ? { readonly [Key in keyof Shape]: Frozen<Shape[Key]> }
    : Shape;

/**
 * The shape on the wire. Does not compile where what the use-case gives is no such shape. What it
 * gives beyond, `Beyond` tells, since a value may always have more than its type says.
 */
export type Wire<_Given extends Frozen<Shape>, Shape> = Shape;

/** Names that the use-case gives and the shape on the wire has not; `never` where there is none. */
export type Beyond<Given, Shape> = Given extends readonly (infer One)[]
  ? Shape extends readonly (infer Item)[]
    ? Beyond<One, Item>
    : never
  : Given extends object
    ? Shape extends object
      ?
          | Exclude<keyof Given, keyof Shape>
          | { [Key in keyof Given & keyof Shape]: Beyond<Given[Key], Shape[Key]> }[keyof Given &
              keyof Shape]
      : never
    : never;

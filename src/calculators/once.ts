/** A value that is made when it is first asked for, and kept. */
export function once<Value extends object>(make: () => Value): () => Value {
  let made: Value | undefined;
  return () => (made ??= make());
}

/** x squared. @source definition */
export function square(x: number): number {
  return x * x;
}

/** x cubed. @source definition */
export function cube(x: number): number {
  return x * x * x;
}

/** x to the fourth. @source definition */
export function fourth(x: number): number {
  return x * x * (x * x);
}

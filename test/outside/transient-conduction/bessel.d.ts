/** The part of the npm package `bessel` (which ships no types) that is the second opinion here. */
declare module 'bessel' {
  const bessel: { besselj(x: number, order: number): number };
  export default bessel;
}

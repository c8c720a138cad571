/** Apart from the unpacking itself, which brings a library that the browser never needs. */
export const isWoff2 = (bytes: Uint8Array): boolean =>
  String.fromCharCode(...bytes.subarray(0, 4)) === 'wOF2';

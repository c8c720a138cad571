/** The font with one table's entry turned into an 'fvar' table of one axis, put at the end. */
export function madeVariable(bytes: Uint8Array): Uint8Array {
  const axis = new DataView(new ArrayBuffer(36));
  [1, 0, 16, 2, 1, 20, 0, 8].forEach((value, index) => {
    axis.setUint16(index * 2, value);
  });
  new Uint8Array(axis.buffer).set(new TextEncoder().encode('wght'), 16);
  [200, 400, 900].forEach((value, index) => {
    axis.setInt32(20 + index * 4, value * 65536);
  });
  const whole = new Uint8Array(bytes.length + 36);
  whole.set(bytes);
  whole.set(new Uint8Array(axis.buffer), bytes.length);
  const view = new DataView(whole.buffer);
  const entries = Array.from({ length: view.getUint16(4) }, (_, index) => 12 + index * 16);
  const tagAt = (at: number) => String.fromCharCode(...whole.subarray(at, at + 4));
  const spare = entries.find((at) => ['gasp', 'DSIG', 'STAT', 'meta'].includes(tagAt(at)));
  if (spare === undefined) throw new Error('no table to spare');
  whole.set(new TextEncoder().encode('fvar'), spare);
  view.setUint32(spare + 8, bytes.length);
  view.setUint32(spare + 12, 36);
  return whole;
}

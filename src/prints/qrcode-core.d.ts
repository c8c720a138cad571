/** The part of the package `qrcode` that works out modules: no files, no canvas. */
declare module 'qrcode/lib/core/qrcode.js' {
  export function create(
    text: string,
    options: { errorCorrectionLevel: 'L' | 'M' | 'Q' | 'H' },
  ): { modules: { size: number; data: Uint8Array } };
}

/** A file that a build writes: its path below its part of the output, with forward slashes. */
export interface MadeFile {
  path: string;
  bytes: Uint8Array | string;
}

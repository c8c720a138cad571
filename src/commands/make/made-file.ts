/** A file that a build writes: its path below its part of the output, with forward slashes. */
export interface MadeFile {
  path: string;
  bytes: Uint8Array | string;
}

/** A print with the hash that the report tells of it, where that is known already. */
export interface MadePrint {
  path: string;
  bytes: Uint8Array;
  sha256: string;
}

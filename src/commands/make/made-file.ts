/** A file that a build writes: its path below its part of the output, with forward slashes. */
export interface MadeFile {
  path: string;
  bytes: Uint8Array | string;
}

/** A print with what is told of it in the report. */
export interface MadePrint {
  path: string;
  byteCount: number;
  sha256: string;
  /** Null where the last build of this process has left the very same in the output folder. */
  bytes: Uint8Array | null;
}

export type DrawnPrint = MadePrint & { bytes: Uint8Array };

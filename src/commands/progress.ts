/** One line that says what a build is doing, for somebody who watches; written over, then wiped. */
export interface Progress {
  show(stage: string): void;
  clear(): void;
}

const WORDS: Record<string, string> = {
  read: 'reading the content files',
  compute: 'working out the mixes',
  data: 'writing CSV and JSON',
  print: 'setting the PDFs',
  site: 'making the pages',
  report: 'adding up',
  swap: 'putting the new output in place',
};

/** On standard error; silent unless `watched`. */
export function processProgress(watched: boolean): Progress {
  const write = (text: string): void => {
    if (watched) process.stderr.write(`\r\u001b[2K${text}`);
  };
  return { show: (stage) => write(`${WORDS[stage] ?? stage} …`), clear: () => write('') };
}

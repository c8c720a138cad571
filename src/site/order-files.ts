/** The files of an order or a week: all of them, and those that each step asks for. */
import type { Kitchen } from '../domain/kitchen.ts';
import {
  type BuiltFile,
  type DownloadLink,
  downloadLinkIn,
  filesOfOrder,
  type OrderFileKind,
} from '../views/downloads.ts';
import { downloadWordsFor } from '../wording/downloads/index.ts';
import type { OrderWords } from '../wording/orders/index.ts';

export interface FileGroup {
  kind: OrderFileKind;
  name: string;
  files: DownloadLink[];
}

/** Which step asks for which sheets. */
const FILES_OF_STEPS: Readonly<Record<string, readonly OrderFileKind[]>> = {
  shop: ['shopping-list'],
  mix: ['order-sheet', 'week-sheet'],
  pack: ['full', 'allergen-cards', 'stack-sheet', 'support-template'],
  when: ['day-sheet', ''],
  oven: ['oven-plan'],
  quote: ['quote', 'costing'],
};

export type StepFiles = Record<string, FileGroup[]>;

export function fileGroups(
  id: string,
  files: readonly BuiltFile[],
  words: OrderWords,
  { locale }: Kitchen,
): FileGroup[] {
  const link = downloadLinkIn(downloadWordsFor(locale));
  return filesOfOrder(id, files).map(({ kind, files: own }: { kind: OrderFileKind; files: BuiltFile[] }) => ({
    kind,
    name: words.page.files[kind] ?? kind,
    files: own.map(link),
  }));
}

/** Of figures and calendar only the calendar is wanted beside a step. */
export function stepFilesOf(groups: readonly FileGroup[]): StepFiles {
  const own = groups.map((group) =>
    group.kind === '' ? { ...group, files: group.files.filter(({ path }) => path.endsWith('.ics')) } : group,
  );
  return Object.fromEntries(
    Object.entries(FILES_OF_STEPS).map(([step, kinds]) => [
      step,
      own.filter(({ kind, files }) => kinds.includes(kind) && files.length > 0),
    ]),
  );
}

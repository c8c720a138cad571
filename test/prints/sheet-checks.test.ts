import { describe, expect, it } from 'vitest';
import type { Surface } from '../../src/prints/sheet/surface.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { printed, smallPrint, words } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const fonts = sampleFonts();
const margins = { top: 10, right: 10, bottom: 10, left: 10 };

async function faultsOf(...runs: ReturnType<typeof words>[]): Promise<string[]> {
  const draw = (surface: Surface) =>
    runs.forEach((run) => {
      surface.within('P', {}, () => surface.text(run));
    });
  return sheetFaults(await readPdf(printed(smallPrint(draw), fonts)), margins);
}

describe('the checks of a sheet', () => {
  it('pass text that stands well', async () => {
    expect(await faultsOf(words('Butter', 10, 20), words('Sugar', 10, 25))).toEqual([]);
  });

  it('find text beyond each margin', async () => {
    expect(await faultsOf(words('left', 9, 20))).toHaveLength(1);
    expect(await faultsOf(words('a long line that runs over the edge', 50, 20))).toHaveLength(1);
    expect(await faultsOf(words('top', 20, 11))).toHaveLength(1);
    expect(await faultsOf(words('bottom', 20, 71))).toHaveLength(1);
  });

  it('find text over text', async () => {
    expect(await faultsOf(words('Butter', 10, 20), words('Sugar', 12, 21))).toHaveLength(1);
  });

  it('find small print', async () => {
    expect(await faultsOf({ ...words('tiny'), sizePt: 7.5 })).toEqual(["page 1: 'tiny' is set in 7.5 pt"]);
  });

  it('find painting that is neither content nor furniture', () => {
    expect(unmarkedPainting('/P <</MCID 0>> BDC\nBT 1 0 0 1 0 0 Tm [<01>] TJ ET\nEMC')).toEqual([]);
    expect(unmarkedPainting('/Artifact BMC\nS\nEMC\nf*')).toEqual(['f*']);
  });
});

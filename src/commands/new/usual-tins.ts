/** Tins that many kitchens have, to choose from; every other is a line more in kitchen.yaml. */
export interface UsualTin {
  id: string;
  name: string;
  /** Its inside, as kitchen.yaml has it. */
  size: string;
}

export const USUAL_TINS: readonly UsualTin[] = [
  { id: 'round-6', name: 'Six-inch round', size: 'shape: round, across: 6in, depth: 3in' },
  { id: 'round-8', name: 'Eight-inch round', size: 'shape: round, across: 8in, depth: 3in' },
  { id: 'round-10', name: 'Ten-inch round', size: 'shape: round, across: 10in, depth: 3in' },
  { id: 'round-20cm', name: 'Round 20', size: 'shape: round, across: 20 cm, depth: 75 mm' },
  { id: 'round-23cm', name: 'Round 23', size: 'shape: round, across: 23 cm, depth: 70 mm' },
  { id: 'square-6', name: 'Six-inch square', size: 'shape: square, side: 6in, depth: 3in' },
  { id: 'square-8', name: 'Eight-inch square', size: 'shape: square, side: 8in, depth: 3in' },
  { id: 'square-10', name: 'Ten-inch square', size: 'shape: square, side: 10in, depth: 3in' },
  { id: 'tray-13-9', name: 'Tray 13 by 9', size: 'shape: rectangle, length: 13in, width: 9in, depth: 2in' },
  {
    id: 'loaf-9-5',
    name: 'Loaf 9 by 5',
    size: 'shape: loaf, length: 9in, width: 5in, base_length: 8in, base_width: 4in, depth: 2 3/4in',
  },
  { id: 'heart-8', name: 'Heart', size: 'shape: heart, across: 8in, depth: 3in' },
];

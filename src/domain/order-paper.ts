/** The papers that an order takes off the shelf. */
export type OrderPaperKind =
  | 'recipe-card'
  | 'finish-card'
  | 'lining-template'
  | 'cutting-guide'
  | 'stack-sheet'
  | 'support-template'
  | 'labels';

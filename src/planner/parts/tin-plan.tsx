/** A tin from above, from the outline that the sums use; decoration, because the name stands beside it. */
import { outlineSvgPath } from '../../compute/outline/index.ts';
import type { TinPicture } from '../../views/tin-picture.ts';

const MARGIN_MM = 4;
/** Tins known only by their water are drawn as a cup of that depth. */
const CUP = 'M-60 -40L-45 40H45L60 -40Z';

export function TinPlan({ picture, frameMm }: { picture: TinPicture; frameMm: number }) {
  const half = frameMm / 2 + MARGIN_MM;
  const path = picture.plan === null ? CUP : outlineSvgPath(picture.plan);
  return (
    <svg viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`} aria-hidden="true" focusable="false">
      <path class="wash" fill-rule="evenodd" d={path} />
    </svg>
  );
}

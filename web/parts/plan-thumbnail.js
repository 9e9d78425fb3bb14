// A lay plan as a small picture: the cloth and where its panels lie, without words. It tells of the plan at a glance;
// PlanDrawing shows it whole.
//
// PlanThumbnail({cloth})   cloth: usable_width, selvedge, squaring, laid, layout, as an answer's cloth has them
import { html, useMemo } from './html.js';
import { isBack, units } from './plan-pieces.js';

const around = ({ width, length }) => [[0, 0], [width, 0], [width, length], [0, length]];

// All panels of one tint are one path, so that a plan of hundreds is drawn at once.
const pathOf = (entries) => entries.map(({ x, y, outline, ...box }) =>
  `M${(outline ?? around(box)).map(([dx, dy]) => `${units(x + dx)} ${-units(y + dy)}`).join('L')}Z`).join('');

export function PlanThumbnail({ cloth }) {
  const [selvedge, usable, laid, ends] = [cloth.selvedge, cloth.usable_width, cloth.laid, cloth.squaring].map(({ nm }) => units(nm));
  // Lines at the very edge of the cloth keep their whole breadth.
  const rim = (laid + usable) / 100;
  const box = { x: -selvedge, y: -laid - ends / 2, width: usable + 2 * selvedge, height: laid + ends };
  const [faces, backs] = useMemo(() => [cloth.layout.filter((entry) => !isBack(entry)), cloth.layout.filter(isBack)].map(pathOf), [cloth.layout]);
  return html`<svg class="drawing plan-thumbnail" aria-hidden="true" viewBox="${box.x - rim} ${box.y - rim} ${box.width + 2 * rim} ${box.height + 2 * rim}">
    <rect class="plan-cloth" ...${box} />
    <path class="plan-panel" d=${faces} /><path class="plan-panel plan-panel-back" d=${backs} /></svg>`;
}

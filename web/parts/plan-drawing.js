// The lay plan to scale, as the cloth lies on the table: the cut end nearest to the maker, at the bottom.
//
// PlanDrawing({cloth, plan?, cut?, height?})
//   cloth    one of the answer's cloths: cloth_width, usable_width, selvedge, squaring, laid, layout, offcuts, motif_points
//   plan     {layout, cuts?, laid?}, e.g. cloth.straight; left out: the cloth's own layout, without cuts
//   cut      number of the cut being made, drawn larger
//   height   most px the drawing may be high (default: a good half of the window)
// x grows from the left usable edge, y from the squared cut end upwards. One user unit is a millimetre of cloth.
// Panels whose part begins with "back" are tinted and every panel is named in words; its top is marked by an arrow.
import { html, useLayoutEffect, useMemo, useRef, useState } from './html.js';
import { SvgFractions } from './cushion-drawing.js';
import { Icon } from './icon.js';
import { KEY_ZOOM, usePlanGestures, zoomedByButton } from './plan-gestures.js';
import { fitView, isFitted } from './plan-view.js';
import { say } from './words.js';

const NM_PER_UNIT = 1e6;
const MARGINS = { left: 30, right: 42, top: 14, bottom: 44 };
const ARROWS = { away: 0, right: 90, toward: 180, left: 270 };
const LEAST_HEIGHT = 260;
const OFFCUT_SIGN_PX = 6.6;

/** A good half of the window, so that the buttons below and the first row after them stay in sight. */
const defaultHeight = () => Math.min(Math.max(innerHeight * 0.58, 300), 720);

const units = (nm) => nm / NM_PER_UNIT;

/** The cloth as drawn: everything that has a place, in units, y downwards. */
function clothSheet(cloth, plan) {
  const laid = units((plan.laid ?? cloth.laid).nm);
  const ends = units(cloth.squaring?.nm ?? 0) / 2;
  const selvedge = units(cloth.selvedge?.nm ?? 0);
  const usable = units(cloth.usable_width.nm);
  return { laid, ends, selvedge, usable, content: { x: -selvedge, y: -laid - ends, width: usable + 2 * selvedge, height: laid + 2 * ends } };
}

function nameLines(label) {
  const match = /^(\S+) (.+)$/.exec(label);
  return match ? [match[1], match[2]] : [label, ''];
}

function Arrow({ x, y, size, up }) {
  return html`<path class="plan-arrow" d="M0 ${size * 0.5}V${-size * 0.5}M${-size * 0.32} ${-size * 0.16}L0 ${-size * 0.5}L${size * 0.32} ${-size * 0.16}"
    transform="translate(${x} ${y}) rotate(${ARROWS[up]})" />`;
}

/** The words on a panel whose middle belongs to the motif: along its lower edge, the arrow in its upper corner. */
function MarkedPanelWords({ entry, box, px }) {
  const across = box.width / px;
  const along = box.height / px;
  if (across < 16 || along < 16) return null;
  const words = across >= 62 ? entry.label : nameLines(entry.label ?? '')[0];
  const size = Math.min(13, along * 0.3, across * 0.5);
  const roomy = across >= 34 && along >= 40;
  return html`<text class="plan-name" x=${box.x + box.width / 2} y=${box.y + box.height - 5 * px} font-size=${size * px} text-anchor="middle">${words}</text>
    ${roomy && entry.up && html`<${Arrow} x=${box.x + 10 * px} y=${box.y + 11 * px} size=${10 * px} up=${entry.up} />`}`;
}

/** The words on a panel, as large as there is room for; `px` is units per screen pixel. */
function PanelWords({ entry, box, px, marked }) {
  const across = box.width / px;
  const along = box.height / px;
  const [first, rest] = nameLines(entry.label ?? '');
  if (marked) return html`<${MarkedPanelWords} entry=${entry} box=${box} px=${px} />`;
  const middle = box.x + box.width / 2;
  const centre = box.y + box.height / 2;
  if (across < 16 || along < 16) return null;
  const roomy = across >= 44 && along >= 62;
  const line = along >= 40 && rest && across >= 34;
  const large = roomy ? 20 : Math.min(17, along * 0.45, across * 0.5);
  const small = Math.min(12.5, across / 3.4);
  const shift = roomy ? 0 : line ? -large * 0.42 : 0;
  return html`${roomy && entry.up && html`<${Arrow} x=${middle} y=${centre - 21 * px} size=${11 * px} up=${entry.up} />`}
    <text class="plan-name" x=${middle} y=${centre + (shift + large * 0.36 + (roomy ? 1 : 0)) * px} font-size=${large * px} text-anchor="middle">${first}</text>
    ${(roomy || line) && rest && html`<text class="plan-part" x=${middle} y=${centre + (roomy ? 26 : shift + large * 0.36 + 14) * px}
      font-size=${small * px} text-anchor="middle">${rest}</text>`}
    ${!roomy && entry.up && along >= 24 && across >= 40 && html`<${Arrow} x=${box.x + 9 * px} y=${centre} size=${9 * px} up=${entry.up} />`}`;
}

function Panel({ entry, px, marked }) {
  const box = { x: units(entry.x), y: -units(entry.y + entry.length), width: units(entry.width), height: units(entry.length) };
  const tint = String(entry.part ?? entry.label ?? '').includes('back') ? ' plan-panel-back' : '';
  const shape = entry.outline
    ? html`<path class="plan-panel${tint}" d="M${entry.outline.map(([x, y]) => `${units(entry.x + x)} ${-units(entry.y + y)}`).join('L')}Z" />`
    : html`<rect class="plan-panel${tint}" ...${box} />`;
  return html`<g>${shape}<${PanelWords} entry=${entry} box=${box} px=${px} marked=${marked} /></g>`;
}

function Offcut({ offcut, px }) {
  const box = { x: units(offcut.x), y: -units(offcut.y + offcut.length.nm), width: units(offcut.width.nm), height: units(offcut.length.nm) };
  const roomAcross = box.width / px;
  const roomAlong = box.height / px;
  const words = `${say('left')} ${offcut.width.text} × ${offcut.length.text}`;
  const needed = words.length * OFFCUT_SIGN_PX + 8;
  const upright = roomAcross < needed && roomAlong >= needed && roomAcross > 18;
  const fits = upright || (roomAcross >= needed && roomAlong > 18);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  return html`<g class="plan-offcut"><rect ...${box} />
    ${fits && html`<text x=${x} y=${y} font-size=${12 * px} text-anchor="middle" dominant-baseline="central"
      transform=${upright ? `rotate(-90 ${x} ${y})` : undefined}><${SvgFractions} text=${words} /></text>`}</g>`;
}

/** Where each cut's round marker stands; markers that would touch step aside, and cuts within a row have none. */
function placedMarkers(cuts, sheet, px) {
  const taken = [];
  return cuts.map((cut) => {
    const across = cut.kind === 'across';
    const from = [units(cut.x), -units(cut.y)];
    const to = across ? [from[0] + units(cut.length), from[1]] : [from[0], from[1] - units(cut.length)];
    const radius = (across ? 11 : 9.5) * px;
    let [x, y] = across ? [sheet.usable + sheet.selvedge + 17 * px, from[1]] : [from[0], (from[1] + to[1]) / 2];
    const touches = () => taken.some(([a, b, r]) => Math.hypot(a - x, b - y) < r + radius);
    for (let tries = 0; tries < 6 && touches(); tries += 1) {
      if (across) x += 2 * radius;
      else y += 2.1 * radius;
    }
    const hidden = cut.full_width === false || (!across && units(cut.length) / px < 36);
    if (!hidden) taken.push([x, y, radius]);
    return { cut, from, to, x, y, radius, hidden };
  });
}

function Cuts({ cuts, sheet, px, current }) {
  return placedMarkers(cuts, sheet, px).map(({ cut, from, to, x, y, radius, hidden }) => {
    const now = cut.number === current;
    const end = cut.kind === 'across' && !hidden ? [x, y] : to;
    return html`<g key=${cut.number} class="plan-cut${now ? ' plan-cut-now' : ''}">
      <path d="M${from[0]} ${from[1]}L${end[0]} ${end[1]}" />
      ${!hidden && html`<circle cx=${x} cy=${y} r=${now ? radius * 1.25 : radius} />
        <text x=${x} y=${y + 4.3 * px} font-size=${12 * px} text-anchor="middle">${cut.number}</text>`}</g>`;
  });
}

function ClothGround({ sheet, px }) {
  const { content, laid, selvedge, usable } = sheet;
  const room = selvedge / px >= 11;
  return html`<rect class="plan-cloth" ...${content} />
    ${selvedge > 0 && [-selvedge, usable].map((x) => html`<g key=${x}><rect class="plan-selvedge" x=${x} y=${content.y} width=${selvedge} height=${content.height} />
      ${room && html`<text class="plan-side" x=${x + selvedge / 2} y=${-laid / 2} font-size=${10 * px} text-anchor="middle" dominant-baseline="central"
        transform="rotate(-90 ${x + selvedge / 2} ${-laid / 2})">${say('selvedge')}</text>`}</g>`)}
    <path class="plan-squared" d="M0 0H${usable}M0 ${-laid}H${usable}" />`;
}

function Dimensions({ sheet, cloth, plan, px }) {
  const { content, laid, usable } = sheet;
  const below = content.y + content.height + 11 * px;
  const beside = content.x - 9 * px;
  const bar = 4 * px;
  const along = say('along', { length: (plan.laid ?? cloth.laid).text });
  return html`<g class="plan-dimension">
    <path d="M0 ${below - bar}V${below + bar}M0 ${below}H${usable}M${usable} ${below - bar}V${below + bar}" />
    <path d="M${beside - bar} 0H${beside + bar}M${beside} 0V${-laid}M${beside - bar} ${-laid}H${beside + bar}" />
    <text x=${usable / 2} y=${below + 17 * px} font-size=${13 * px} text-anchor="middle"><${SvgFractions} text=${say('across', { length: cloth.usable_width.text })} /></text>
    <text x=${beside - 9 * px} y=${-laid / 2} font-size=${13 * px} text-anchor="middle" transform="rotate(-90 ${beside - 9 * px} ${-laid / 2})"><${SvgFractions} text=${along} /></text>
    <text class="plan-cut-end" x=${usable / 2} y=${below + 31 * px} font-size=${11.5 * px} text-anchor="middle">${say('cutEnd')}</text>
  </g>`;
}

function MotifPoints({ points, px }) {
  const arm = 4 * px;
  return points.map(([x, y]) => html`<path key="${x} ${y}" class="plan-motif"
    d="M${units(x) - arm} ${-units(y)}h${2 * arm}M${units(x)} ${-units(y) - arm}v${2 * arm}" />`);
}

/** The size of the drawing on the screen: as wide as there is room, as high as the cloth asks for within reason. */
function useFrame(content, most) {
  const holder = useRef(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const measure = () => setWidth(Math.round(holder.current.clientWidth));
    const sizes = new ResizeObserver(measure);
    sizes.observe(holder.current);
    measure();
    return () => sizes.disconnect();
  }, []);
  const room = Math.max(width - MARGINS.left - MARGINS.right, 40);
  const wanted = (content.height / content.width) * room + MARGINS.top + MARGINS.bottom;
  return [holder, { width: width || 320, height: Math.round(Math.min(Math.max(wanted, LEAST_HEIGHT), most)) }];
}

/** The view, which goes back to the whole plan whenever the plan or the frame becomes another one. */
function useView(fitted) {
  const [state, setState] = useState({ fitted, view: fitted });
  const same = ['x', 'y', 'width', 'height'].every((key) => state.fitted[key] === fitted[key]);
  const view = same ? state.view : fitted;
  const change = (next) => setState((old) => {
    const base = old.fitted === fitted || same ? old.view : fitted;
    return { fitted, view: next(base) };
  });
  return [view, change];
}

export function PlanDrawing({ cloth, plan = { layout: cloth.layout }, cut, height = defaultHeight() }) {
  const sheet = useMemo(() => clothSheet(cloth, plan), [cloth, plan.layout]);
  const [holder, frame] = useFrame(sheet.content, height);
  const fitted = useMemo(() => fitView(sheet.content, frame, MARGINS), [sheet, frame.width, frame.height]);
  const [view, change] = useView(fitted);
  const gestures = usePlanGestures(fitted, change);
  const px = view.width / frame.width;
  const cuts = plan.cuts ?? [];
  const drawn = useMemo(() => html`<${ClothGround} sheet=${sheet} px=${px} />
    ${(cloth.offcuts ?? []).map((offcut, place) => html`<${Offcut} key="o${place}" offcut=${offcut} px=${px} />`)}
    ${plan.layout.map((entry) => html`<${Panel} key="${entry.piece} ${entry.copy}" entry=${entry} px=${px} marked=${(cloth.motif_points ?? []).length > 0} />`)}
    <${MotifPoints} points=${cloth.motif_points ?? []} px=${px} />
    <${Dimensions} sheet=${sheet} cloth=${cloth} plan=${plan} px=${px} />
    <${Cuts} cuts=${cuts} sheet=${sheet} px=${px} current=${cut} />`, [sheet, px, plan.layout, cloth.offcuts, cut, say('left')]);
  const whole = isFitted(view, fitted);
  const name = say('layPlan', {
    across: cloth.usable_width.text, along: (plan.laid ?? cloth.laid).text, panels: plan.layout.length, cuts: cuts.length,
  });
  const zoom = (factor) => change((now) => zoomedByButton(now, fitted, factor));
  return html`<div class="plan" ref=${holder}>
    <div class="plan-frame" role="group" tabindex="0" aria-label="${name}. ${say('layPlanKeys')}" onKeyDown=${gestures.onKeyDown}>
      <svg class="drawing plan-drawing${whole ? '' : ' plan-near'}" role="img" aria-label=${name} style=${{ height: `${frame.height}px` }}
        viewBox="${view.x} ${view.y} ${view.width} ${view.height}" ...${{ ...gestures, onKeyDown: undefined }}>${drawn}</svg>
    </div>
    <div class="plan-tools">
      <button type="button" class="icon-button" aria-label=${say('zoomOut')} aria-disabled=${String(whole)} onClick=${() => zoom(1 / KEY_ZOOM)}><${Icon} name="minus" /></button>
      <button type="button" class="icon-button" aria-label=${say('fit')} aria-disabled=${String(whole)} onClick=${() => change(() => fitted)}><${Icon} name="fit" /></button>
      <button type="button" class="icon-button" aria-label=${say('zoomIn')} onClick=${() => zoom(KEY_ZOOM)}><${Icon} name="plus" /></button>
    </div>
  </div>`;
}

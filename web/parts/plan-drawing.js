// The lay plan to scale, as the cloth lies on the table: the cut end nearest to the maker, at the bottom.
//
// PlanDrawing({cloth, plan?, cut?, height?})
//   cloth    one of the answer's cloths: cloth_width, usable_width, selvedge, squaring, laid, layout, offcuts, motif_points;
//            of a piece in hand also its outline, and the flaws that are kept clear of
//   plan     {layout, cuts?, laid?}, e.g. cloth.straight; left out: the cloth's own layout, without cuts
//   cut      number of the cut being made, drawn larger
//   called   the word that names the drawing (default: layPlan)
//   repeat   the picture of its repeat as it lies on the cloth, as of picture/tiles.js; null or left out: a plain one
//   height   most px the drawing may be high (default: a good half of the window)
// x grows from the left usable edge, y from the squared cut end upwards. One user unit is a millimetre of cloth.
// Panels whose part begins with "back" are tinted and every panel is named in words; its top is marked by an arrow.
import { html, useLayoutEffect, useMemo, useRef, useState } from './html.js';
import { SvgFractions } from './cushions/dimension.js';
import { Icon } from './icon.js';
import { Cuts } from './plan-cuts.js';
import { KEY_ZOOM, usePlanGestures, zoomedByButton } from './plan-gestures.js';
import { Flaw, MotifPoints, Offcut, PanelFace, PanelWords, Strips, units } from './plan-pieces.js';
import { PrintedCloth } from './plan-printed.js';
import { carried, isFitted, viewsOf } from './plan-view.js';
import { partWords, say } from './words.js';

const MARGINS = { left: 30, right: 46, top: 14, bottom: 44 };
const LEAST_HEIGHT = 260;

/** A good half of the window, so that the buttons below and the first row after them stay in sight. */
const defaultHeight = () => Math.min(Math.max(innerHeight * 0.58, 300), 720);

/** The cloth as drawn: everything that has a place, in units, y downwards. */
function clothSheet(cloth, plan) {
  const laid = units((plan.laid ?? cloth.laid).nm);
  const ends = units(cloth.squaring?.nm ?? 0) / 2;
  const selvedge = units(cloth.selvedge?.nm ?? 0);
  const usable = units(cloth.usable_width.nm);
  const square = { x: -selvedge, y: -laid - ends, width: usable + 2 * selvedge, height: laid + 2 * ends };
  return { laid, ends, selvedge, usable, outline: cloth.outline, content: cloth.outline ? boxAround(cloth.outline) : square };
}

function boxAround(outline) {
  const [xs, ys] = [outline.map(([x]) => units(x)), outline.map(([, y]) => -units(y))];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

function ClothGround({ sheet, px }) {
  const { content, laid, outline, selvedge, usable } = sheet;
  const room = selvedge / px >= 11;
  const side = outline ? { y: -laid, height: laid } : { y: content.y, height: content.height };
  return html`${outline
      ? html`<path class="plan-cloth" d="M${outline.map(([x, y]) => `${units(x)} ${-units(y)}`).join('L')}Z" />`
      : html`<rect class="plan-cloth" ...${content} />`}
    ${selvedge > 0 && [-selvedge, usable].map((x) => html`<g key=${x}><rect class="plan-selvedge" x=${x} width=${selvedge} ...${side} />
      ${room && html`<text class="plan-side" x=${x + selvedge / 2} y=${-laid / 2} font-size=${10 * px} text-anchor="middle" dominant-baseline="central"
        transform="rotate(-90 ${x + selvedge / 2} ${-laid / 2})">${say('selvedge')}</text>`}</g>`)}
    <path class="plan-squared" d="M0 0H${usable}M0 ${-laid}H${usable}" />`;
}

function Dimensions({ sheet, cloth, plan, px, reach }) {
  const { content, laid, usable } = sheet;
  const below = content.y + content.height + 11 * px;
  const beside = content.x - 9 * px;
  const bar = 4 * px;
  const middle = laid <= reach ? -laid / 2 : -reach * 0.35; // of a plan longer than the view, where it begins
  const along = say('along', { length: (plan.laid ?? cloth.laid).text });
  return html`<g class="plan-dimension">
    <path d="M0 ${below - bar}V${below + bar}M0 ${below}H${usable}M${usable} ${below - bar}V${below + bar}" />
    <path d="M${beside - bar} 0H${beside + bar}M${beside} 0V${-laid}M${beside - bar} ${-laid}H${beside + bar}" />
    <text x=${usable / 2} y=${below + 17 * px} font-size=${13 * px} text-anchor="middle"><${SvgFractions} text=${say('across', { length: cloth.usable_width.text })} /></text>
    <text x=${beside - 9 * px} y=${middle} font-size=${13 * px} text-anchor="middle" transform="rotate(-90 ${beside - 9 * px} ${middle})"><${SvgFractions} text=${along} /></text>
    <text class="plan-cut-end" x=${usable / 2} y=${below + 31 * px} font-size=${11.5 * px} text-anchor="middle">${say('cutEnd')}</text>
  </g>`;
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
  const room = Math.max((width || 320) - MARGINS.left - MARGINS.right, 40);
  const wanted = (content.height / content.width) * room + MARGINS.top + MARGINS.bottom;
  return [holder, { width, height: Math.round(Math.min(Math.max(wanted, LEAST_HEIGHT), most)) }];
}

/** The view: as it begins until somebody moves it, then where it was moved to, also on a plan that has become another. */
function useView(views) {
  const [moved, setMoved] = useState(null);
  const view = moved ? carried(moved.view, moved.whole, views.whole) : views.begin;
  const now = useRef(view);
  now.current = view;
  const change = (next) => {
    const before = now.current;
    now.current = next(before);
    setMoved({ view: now.current, whole: views.whole });
    return [before, now.current];
  };
  return [view, change];
}

const touches = (low, high) => (from, to) => from <= high && to >= low;

/** What is drawn of a plan: all that lies in the view and as far again on both sides. */
function drawnPart(cloth, plan, view) {
  const half = Math.floor(-view.y / view.height);
  const isNear = touches((half - 2) * view.height, (half + 2) * view.height);
  const within = (y, length) => isNear(units(y), units(y + length));
  return {
    panels: plan.layout.filter(({ grain, y, length }) => !grain && within(y, length)),
    strips: plan.layout.filter(({ grain, y, length }) => grain && within(y, length)),
    cuts: (plan.cuts ?? []).filter(({ kind, y, length }) => within(y, kind === 'along' ? length : 0)),
    offcuts: (cloth.offcuts ?? []).filter(({ y, length }) => within(y, length.nm)),
    points: (cloth.motif_points ?? []).filter(([, y]) => within(y, 0)),
  };
}

function Sheet({ sheet, cloth, plan, repeat, view, px, current }) {
  const { panels, strips, cuts, offcuts, points } = drawnPart(cloth, plan, view);
  const marked = (cloth.motif_points ?? []).length;
  const { width, height } = sheet.content;
  return html`<${ClothGround} sheet=${sheet} px=${px} />
    ${repeat && html`<${PrintedCloth} repeat=${repeat} box=${{ x: 0, y: -sheet.laid, width: sheet.usable, height: sheet.laid }} panels=${plan.layout} />`}
    ${(cloth.flaws ?? []).map((flaw) => html`<${Flaw} key="x${flaw.x} ${flaw.y}" flaw=${flaw} px=${px} />`)}
    ${offcuts.map((offcut) => html`<${Offcut} key="o${offcut.x} ${offcut.y}" offcut=${offcut} px=${px} />`)}
    ${panels.map((entry) => html`<${PanelFace} key="f${entry.piece} ${entry.copy}" entry=${entry} />`)}
    <${Strips} strips=${strips} px=${px} />
    <${MotifPoints} points=${points} room=${(width * height) / marked} px=${px} />
    ${panels.map((entry) => html`<${PanelWords} key="w${entry.piece} ${entry.copy}" entry=${entry} px=${px} marked=${marked > 0} />`)}
    <${Dimensions} sheet=${sheet} cloth=${cloth} plan=${plan} px=${px} reach=${view.height} />
    <${Cuts} cuts=${cuts} sheet=${sheet} px=${px} current=${current} />`;
}

export function PlanDrawing({ cloth, plan = { layout: cloth.layout }, repeat, cut, called = 'layPlan', height = defaultHeight() }) {
  const sheet = useMemo(() => clothSheet(cloth, plan), [cloth, plan.layout]);
  const [holder, frame] = useFrame(sheet.content, height);
  const views = useMemo(() => viewsOf(sheet.content, frame, MARGINS), [sheet, frame.width, frame.height]);
  const [view, change] = useView(views);
  const gestures = usePlanGestures(views.whole, change);
  const px = view.width / frame.width;
  const part = Math.floor(-view.y / view.height);
  const drawn = useMemo(
    () => frame.width > 0 && html`<${Sheet} sheet=${sheet} cloth=${cloth} plan=${plan} repeat=${repeat} view=${view} px=${px} current=${cut} />`,
    [sheet, px, part, plan.layout, cloth.offcuts, cloth.flaws, cut, repeat?.href, partWords.value],
  );
  const whole = isFitted(view, views.whole);
  const name = say(called, {
    across: cloth.usable_width.text, along: (plan.laid ?? cloth.laid).text, panels: plan.layout.length, cuts: (plan.cuts ?? []).length,
  });
  const zoom = (factor) => change((now) => zoomedByButton(now, views.whole, factor));
  return html`<div class="plan" ref=${holder}>
    <div class="plan-frame" role="group" tabindex="0" aria-label="${name}. ${say('layPlanKeys')}" onKeyDown=${gestures.onKeyDown}>
      <svg class="drawing plan-drawing${whole ? '' : ' plan-near'}${repeat ? ' plan-printed' : ''}" role="img" aria-label=${name} style=${{ height: `${frame.height}px` }}
        viewBox="${view.x} ${view.y} ${view.width} ${view.height}" ...${{ ...gestures, onKeyDown: undefined }}>${drawn}</svg>
    </div>
    <div class="plan-tools">
      <button type="button" class="icon-button" aria-label=${say('zoomOut')} aria-disabled=${String(whole)} onClick=${() => zoom(1 / KEY_ZOOM)}><${Icon} name="minus" /></button>
      <button type="button" class="icon-button" aria-label=${say('fit')} aria-disabled=${String(whole)} onClick=${() => change(() => views.whole)}><${Icon} name="fit" /></button>
      <button type="button" class="icon-button" aria-label=${say('zoomIn')} onClick=${() => zoom(KEY_ZOOM)}><${Icon} name="plus" /></button>
    </div>
  </div>`;
}

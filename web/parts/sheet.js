// A dialog that rises from the bottom: what is behind it is inert, Escape and the back button close it.
//
// Sheet({title, onClose, children, footer?, wide?})   shown while rendered; footer: an action bar's content
// The back button works by one history entry with the same address ({sheet: id} in its state). On closing
// any other way that entry is taken back, so navigate only from onClosed (called after it is gone).
import { html, useId, useLayoutEffect, useRef } from './html.js';
import { Icon } from './icon.js';
import { say } from './words.js';

// The entry is there before the sheet is seen: a Back pressed at the first sight of it must not go a step too far.
function useBackCloses(id, onClose, onClosed) {
  const latest = useRef({});
  latest.current = { onClose, onClosed };
  useLayoutEffect(() => {
    history.pushState({ ...history.state, sheet: id }, '');
    const onBack = () => {
      if (history.state?.sheet !== id) latest.current.onClose();
    };
    addEventListener('popstate', onBack);
    return () => {
      removeEventListener('popstate', onBack);
      const tell = () => latest.current.onClosed?.();
      if (history.state?.sheet !== id) return tell();
      addEventListener('popstate', tell, { once: true });
      return history.back();
    };
  }, []);
}

export function Sheet({ title, onClose, onClosed, children, footer, wide }) {
  const id = useId();
  const dialog = useRef(null);
  const heading = useRef(null);
  useBackCloses(id, onClose, onClosed);
  useLayoutEffect(() => {
    const before = document.activeElement;
    const shown = dialog.current;
    shown.showModal();
    if (!shown.contains(document.activeElement) || document.activeElement.matches('.icon-button')) heading.current.focus();
    return () => {
      shown.close();
      before?.focus?.({ preventScroll: true });
    };
  }, []);
  const onCancel = (event) => {
    event.preventDefault();
    onClose();
  };
  const onClick = (event) => {
    if (event.target === dialog.current) onClose();
  };
  return html`<dialog class="sheet${wide ? ' sheet-wide' : ''}" ref=${dialog} aria-labelledby="${id}-title"
      onCancel=${onCancel} onClick=${onClick}>
    <div class="sheet-paper">
      <div class="sheet-head"><h2 id="${id}-title" tabindex="-1" ref=${heading}>${title}</h2>
        <button type="button" class="icon-button icon-button-plain" aria-label=${say('close')} onClick=${onClose}>
          <${Icon} name="close" /></button></div>
      <div class="sheet-body" tabindex="0">${children}</div>
      ${footer && html`<div class="action-bar">${footer}</div>`}
    </div>
  </dialog>`;
}

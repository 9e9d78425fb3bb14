// The cloth's own picture: a photo taken or picked, one repeat marked on it, and how the repeat looks side by side.
import { html, useEffect, useRef, useState } from '../../parts/html.js';
import { Icon } from '../../parts/icon.js';
import { Notice } from '../../parts/notice.js';
import { PictureUnreadable, shrunk } from '../../parts/picture/pictures.js';
import { room, measureRoom } from '../../store/keeping.js';
import { bringPictureBack, keepPicture, pictureOf } from '../../store/pictures.js';
import { lastOf } from '../../store/pointer.js';
import { say } from '../../words/words.js';
import { MarkRepeat } from './mark-repeat.js';
import { MotifMarks } from './motif-marks.js';

// Why a picture was not kept, in words; the one that was there stays.
async function reasonOf(error) {
  if (error instanceof PictureUnreadable) return say('cloth.pictureUnreadable');
  if (error?.name !== 'QuotaExceededError') return say('cloth.pictureNotKept');
  await measureRoom();
  return say('cloth.pictureFull', { used: room.value?.used ?? '?' });
}

// A button that opens the camera or the pictures of the phone.
function Picker({ word, icon, capture, onFile }) {
  const input = useRef(null);
  const pick = (event) => {
    const [file] = event.target.files;
    event.target.value = '';
    if (file) onFile(file);
  };
  return html`<input ref=${input} type="file" accept="image/*" capture=${capture} hidden aria-label=${say(word)} onChange=${pick} />
    <button type="button" class="button" onClick=${() => input.current.click()}><${Icon} name=${icon} />${say(word)}</button>`;
}

// What is done with the picture at the moment, and why the last of it failed: {isBusy, told, act}.
function useWork() {
  const [state, setState] = useState({ isBusy: false, told: null });
  const act = async (work) => {
    setState({ isBusy: true, told: null });
    try {
      await work();
      setState({ isBusy: false, told: null });
    } catch (error) {
      setState({ isBusy: false, told: await reasonOf(error) });
    }
  };
  return { ...state, act };
}

const Plain = ({ icon, word, onPress }) => html`<button type="button" class="button-plain" onClick=${onPress}>
  <${Icon} name=${icon} size=${20} />${say(word)}</button>`;

export function Picture({ cloth }) {
  const id = lastOf(cloth);
  const { now, before, repeatUrl } = pictureOf(id) ?? {};
  const { isBusy, told, act } = useWork();
  const [isMarking, setMarking] = useState(false);
  const take = (file) => act(async () => {
    const { bytes: photo, width, height } = await shrunk(file);
    await keepPicture(id, { photo, width, height });
    setMarking(true);
  });
  useEffect(() => setMarking(false), [cloth]);
  return html`<section class="stack">
    <h2 class="section-title">${say('cloth.picture')}</h2>
    ${repeatUrl ? html`<${MotifMarks} cloth=${cloth} href=${repeatUrl} />` : html`<p class="note">${say('cloth.pictureHint')}</p>`}
    <div role="status">${isBusy && html`<p class="note">${say('cloth.pictureBusy')}</p>`}</div>
    <div role="alert">${told && html`<${Notice} level="stop" text=${told} />`}</div>
    ${now && html`<button type="button" class="button" onClick=${() => setMarking(true)}>
      <${Icon} name="repeat" />${say(now.repeat ? 'cloth.markAgain' : 'cloth.mark')}</button>`}
    <${Picker} word="cloth.takePhoto" icon="camera" capture="environment" onFile=${take} />
    <${Picker} word="cloth.pickPhoto" icon="upload" onFile=${take} />
    ${now && html`<${Plain} icon="bin" word="cloth.removePicture" onPress=${() => act(() => keepPicture(id, null))} />`}
    ${before && html`<${Plain} icon="undo" word="cloth.pictureBack" onPress=${() => act(() => bringPictureBack(id))} />`}
    ${isMarking && now && html`<${MarkRepeat} cloth=${cloth} onClose=${() => setMarking(false)} onKeep=${(marks) => act(() => keepPicture(id, { ...now, ...marks }))} />`}
  </section>`;
}

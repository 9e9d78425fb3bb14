// The app: opens the store, returns to where the maker stood, shows the screen; then starts Python and offline use.
import { html, render } from './parts/html.js';
import { effect, signal } from './vendor/signals.mjs';
import { startCore } from './boot/core.js';
import { startOffline } from './boot/offline.js';
import { Home } from './home/home.js';
import { Settings } from './home/settings.js';
import { JobScreen } from './stations/job-screen.js';
import { isField, isView } from './stations/catalogue.js';
import { startAnswers } from './store/answers.js';
import { databaseTrouble } from './store/database.js';
import { startKeeping } from './store/keeping.js';
import { startPictures } from './store/pictures.js';
import { startPrices } from './store/prices.js';
import { HOME, moveTo, place, resume } from './store/place.js';
import { fetchReadings, readings } from './store/readings.js';
import { openById, openJob, startSession } from './store/session.js';
import { readSettings, startLight } from './store/settings.js';
import { emptyBin, readShelf, startShelf } from './store/shelf.js';
import { startWords } from './words/words.js';

const UNDRAWN = 1000; // ms after which the page is taken not to be drawn for now

const opened = signal(false);

// Opens the job that the place names; one that is gone leads home.
async function openPlace({ screen, id }) {
  if (screen !== 'job' || openJob.value?.id === id) return;
  const found = await openById(id).catch(() => false);
  if (!found && place.value.id === id) moveTo(HOME);
}

function App() {
  const { screen, id } = place.value;
  if (screen === 'settings') return html`<${Settings} />`;
  if (screen === 'job') return openJob.value?.id === id ? html`<${JobScreen} />` : html`<div class="screen"></div>`;
  return html`<${Home} />`;
}

const Page = () => (opened.value ? html`<${App} />` : html`<div class="screen"></div>`);

const opensSheet = ({ field }) => Boolean(field) && isField(field) && !isView(field);

// The table of readings is needed by the tape; without it the tape says so, and it is fetched again.
function keepFetching() {
  fetchReadings().catch(() => setTimeout(() => readings.value ?? keepFetching(), 2000));
}

async function start() {
  keepFetching();
  await readSettings().catch(() => undefined);
  startLight();
  startWords();
  await Promise.all([resume(opensSheet), readShelf().catch(() => undefined)]);
  startShelf();
  startSession();
  startKeeping();
  startAnswers();
  startPrices();
  startPictures();
  effect(() => { openPlace(place.value); });
  opened.value = true;
  emptyBin().catch(() => undefined);
}

render(html`<${Page} />`, document.getElementById('app'));
// A database that stays shut must not keep the page blank: what is wrong is said on the page itself.
effect(() => { if (databaseTrouble.value) opened.value = true; });
start();
// Python waits for the first picture, which it would hold up; but a page that lies under another tab is never drawn.
const drawn = new Promise((resolve) => {
  requestAnimationFrame(() => setTimeout(resolve));
  setTimeout(resolve, UNDRAWN);
});
drawn.then(() => {
  startCore();
  startOffline();
});

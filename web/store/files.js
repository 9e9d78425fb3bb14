// Jobs as files: brought in only when whole (faults B23, B25, B35), saved as plain JSON that any version reads again;
// and the papers of a job.
import { ask, coreState } from '../boot/core.js';
import { say } from '../words/words.js';
import { settings } from './settings.js';

const LARGEST = 5_000_000;
const DEEPEST = 12;
const HOSTILE = ['__proto__', 'constructor', 'prototype'];

export class FileRefused extends Error {}

function refuse(key, values) {
  throw new FileRefused(say(`file.${key}`, values));
}

const isGroup = (value) => value !== null && typeof value === 'object' && !Array.isArray(value);

function checkNames(value, depth = 0) {
  if (value === null || typeof value !== 'object') return;
  if (depth > DEEPEST) refuse('deep');
  for (const [name, inner] of Object.entries(value)) {
    if (HOSTILE.includes(name)) refuse('hostile', { name });
    checkNames(inner, depth + 1);
  }
}

// What the screens themselves rely on, so that no record can ever keep the app from opening.
function checkForm(job) {
  if (!isGroup(job) || job.format !== 'plumpline-job') refuse('notJob');
  if (job.version !== 1) refuse('version', { version: String(job.version) });
  if (typeof job.id !== 'string' || job.id === '') refuse('missing', { name: 'id' });
  for (const list of ['cushions', 'cloths']) {
    if (!Array.isArray(job[list])) refuse('missing', { name: list });
    job[list].forEach((entry, at) => {
      if (!isGroup(entry) || typeof entry.id !== 'string') refuse('missing', { name: `${list} ${at + 1}, id` });
    });
  }
  job.cushions.forEach((cushion, at) => {
    for (const name of ['insert', 'cover']) {
      if (!isGroup(cushion[name])) refuse('missing', { name: `cushions ${at + 1}, ${name}` });
    }
  });
}

async function checkByCore(job) {
  const { problems: bad = [] } = await ask({ do: 'check', job, words: settings.value.words });
  if (bad.length > 0) throw new FileRefused(bad.map(({ at, text }) => say('file.at', { at, text })).join('\n'));
}

// The job a file holds, checked whole; throws FileRefused with every reason. Nothing is stored here.
export async function readJobFile(file) {
  if (file.size === 0) refuse('empty');
  if (file.size > LARGEST) refuse('tooLarge', { size: Math.ceil(file.size / 1_000_000) });
  const job = parse(await file.text());
  checkNames(job);
  checkForm(job);
  if (coreState.value.phase === 'failed') return { job, checked: false };
  try {
    await checkByCore(job);
    return { job, checked: true };
  } catch (error) {
    if (error instanceof FileRefused) throw error;
    return { job, checked: false };
  }
}

function parse(text) {
  try {
    return JSON.parse(text);
  } catch (error) {
    return refuse('notText', { reason: error.message });
  }
}

const fileName = (name) => (name ?? '').replace(/[^\p{L}\p{N} ._-]+/gu, ' ').trim().slice(0, 60) || 'job';

export const jobFile = (job) =>
  new File([`${JSON.stringify(job, null, 2)}\n`], `${fileName(job.name)}.plumpline.json`, { type: 'application/json' });

// A paper of a job: `pdf` is the file in base 64, as the core gives it, `words` say what it is.
export function paperFile(job, pdf, words) {
  const bytes = Uint8Array.from(atob(pdf), (sign) => sign.charCodeAt(0));
  return new File([bytes], `${[job.name, ...words].map(fileName).join(', ')}.pdf`, { type: 'application/pdf' });
}

const isStandalone = () => matchMedia('(display-mode: standalone)').matches || navigator.standalone === true;

// Hands a file over: by the share sheet where the app is installed (fault B31), else as a download.
// 'shared', 'saved', 'left' when the maker thought better of it, 'again' when the phone wants a tap of its own.
export async function handOver(file) {
  if (isStandalone() && navigator.canShare?.({ files: [file] })) return shareFile(file);
  const link = Object.assign(document.createElement('a'), { href: URL.createObjectURL(file), download: file.name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return 'saved';
}

export async function shareFile(file) {
  try {
    await navigator.share({ files: [file] });
    return 'shared';
  } catch (error) {
    if (error.name === 'AbortError') return 'left';
    if (error.name === 'NotAllowedError') return 'again';
    throw error;
  }
}

// Hands a text to whatever the phone sends messages with, or copies it where there is no share sheet.
// {outcome: 'shared' | 'left' | 'copied' | 'failed', reason?}
export async function shareText(text) {
  try {
    if (navigator.share) {
      await navigator.share({ text });
      return { outcome: 'shared' };
    }
    await navigator.clipboard.writeText(text);
    return { outcome: 'copied' };
  } catch (error) {
    return error.name === 'AbortError' ? { outcome: 'left' } : { outcome: 'failed', reason: error.message };
  }
}

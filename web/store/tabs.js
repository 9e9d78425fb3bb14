// Tells the other open tabs that a job was written, and hears it from them.
const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('plumpline') : null;

export const tellTabs = (news) => channel?.postMessage(news);

export const hearTabs = (listener) => channel?.addEventListener('message', (event) => listener(event.data));

/**
 * Tells open pages what became of the last build: load again, or show what is wrong over the last good page.
 * The script is added on the way out; the files on disk stay as they were built.
 */
import type { ServerResponse } from 'node:http';

export const LIVE_PATH = '/-live';
export const SCRIPT_PATH = '/-live.js';

const TAG = `<script src="${SCRIPT_PATH}"></script>`;

/** The page with the script added; a page without a closing body tag gets it at its end. */
export function withLiveScript(html: string): string {
  const at = html.lastIndexOf('</body>');
  return at < 0 ? `${html}${TAG}` : `${html.slice(0, at)}${TAG}${html.slice(at)}`;
}

/** Classic script: shows problems as plain text in a panel, loads the page again after a good build. */
export const LIVE_SCRIPT = `(() => {
  let panel = null;
  const hide = () => { if (panel) panel.remove(); panel = null; };
  const show = (text) => {
    hide();
    panel = document.createElement('div');
    panel.setAttribute('role', 'alert');
    panel.style.cssText = 'position:fixed;inset:auto 0 0 0;max-height:60vh;overflow:auto;z-index:9999;padding:1rem;background:Canvas;color:CanvasText;border-top:3px solid;font:14px/1.45 monospace;white-space:pre-wrap';
    const title = document.createElement('strong');
    title.textContent = 'The last change has not been built. This page shows the last good build.';
    panel.append(title, '\\n\\n' + text);
    document.body.append(panel);
  };
  const events = new EventSource('${LIVE_PATH}');
  events.addEventListener('built', () => location.reload());
  events.addEventListener('problems', (event) => show(JSON.parse(event.data)));
})();
`;

export interface LiveReload {
  /** Keeps a page's connection. */
  listen(response: ServerResponse): void;
  built(): void;
  problems(text: string): void;
  close(): void;
}

/** All pages that are open. One that opens while a build is broken is told so at once. */
export function openLiveReload(): LiveReload {
  const pages = new Set<ServerResponse>();
  let wrong: string | null = null;
  const send = (page: ServerResponse, event: string, data: string): void => {
    page.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
  };
  return {
    listen(response) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write(': open\n\n');
      pages.add(response);
      response.on('close', () => pages.delete(response));
      if (wrong !== null) send(response, 'problems', wrong);
    },
    built() {
      wrong = null;
      for (const page of pages) send(page, 'built', '');
    },
    problems(text) {
      wrong = text;
      for (const page of pages) send(page, 'problems', text);
    },
    close() {
      for (const page of pages) page.end();
    },
  };
}

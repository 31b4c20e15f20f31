import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, launch } from 'puppeteer-core';

/** A second browser with another engine, without a window and with an empty home. */
export interface Firefox {
  readonly browser: Browser;
  /** a file that was downloaded, once it is whole */
  taken(name: string): Promise<Buffer>;
}

/** Opens the distribution's own, which speaks the standard protocol of web drivers. */
export async function openFirefox(): Promise<Firefox> {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-firefox-'));
  const browser = await launch({
    browser: 'firefox',
    executablePath: '/usr/bin/firefox-esr',
    headless: true,
    extraPrefsFirefox: {
      'browser.download.dir': folder,
      'browser.download.folderList': 2,
      'browser.download.useDownloadDir': true,
      'browser.download.always_ask_before_handling_new_types': false,
      'browser.download.manager.showWhenStarting': false,
      'browser.helperApps.neverAsk.saveToDisk': 'application/octet-stream,model/stl,text/plain',
    },
  });
  return { browser, taken: (name) => whole(join(folder, name), folder) };
}

async function whole(path: string, folder: string): Promise<Buffer> {
  for (let tries = 0; tries < 600; tries++) {
    const isLoading = readdirSync(folder).some((file) => file.endsWith('.part'));
    const bytes = existsSync(path) && !isLoading ? readFileSync(path) : Buffer.alloc(0);
    if (bytes.length > 0) {
      // the next of this name would get another
      rmSync(path);
      return bytes;
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${path} did not come`);
}

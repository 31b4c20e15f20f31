import { unpacked } from './unpacked.js';

/** Puts in the page's own script, which lies in it deflated; the security policy knows it by its hash. */
async function load(): Promise<void> {
  const script = document.createElement('script');
  script.textContent = new TextDecoder().decode(await unpacked('page'));
  document.head.append(script);
}

load().catch(() => {
  const told = document.querySelector('#live [role=status]');
  if (told) told.textContent = 'This browser is too old for this page; the command leadwright does the same.';
});

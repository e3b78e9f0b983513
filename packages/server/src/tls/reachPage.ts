import type { Lan } from '@evenfall/api';
import type { Words } from '@evenfall/words';

export const REACH_STYLE = `:root { color-scheme: light dark; font: 1.0625rem/1.5 system-ui, sans-serif; }
body { max-width: 40rem; margin: 0 auto; padding: 1.25rem; background: #f6f1e5; color: #23272f; }
a { color: inherit; }
code { font-size: 1rem; overflow-wrap: anywhere; }
img { width: min(16rem, 100%); height: auto; display: block; }
li { margin-block: 0.6rem; }
.band { margin: 0 0 1rem; padding: 0.25rem 0.75rem; background: #ffe08a; color: #2a2104; font-weight: 600; }
.address { font-size: 1.25rem; font-weight: 600; overflow-wrap: anywhere; }
@media (prefers-color-scheme: dark) { body { background: #1a1815; color: #ece5d6; } }
`;

/**
 * The page that says how to reach and trust Evenfall. It holds nothing of anybody.
 *
 * @param lan how the server is reached in the network; null on the loopback alone
 * @param isPlain whether it stands in for the app on plain HTTP
 * @param isInvented whether it is the invented clinic, which says so on every page
 * @param words in the language of whoever asks: it is the first page that they meet
 */
export function reachPage(lan: Lan | null, isPlain: boolean, isInvented: boolean, words: Words): string {
  const heading = words.sentence('reach.title');
  const title = words.sentence(isInvented ? 'app.pageTitleInvented' : 'app.pageTitle', { text: heading });
  const band = isInvented ? `<p class="band">${escaped(words.sentence('app.inventedBand'))}</p>` : '';
  const back = isPlain ? [] : [`<p><a href="/">${escaped(words.sentence('app.toPeople'))}</a></p>`];
  const body =
    lan === null
      ? paragraph(words.sentence('reach.loopbackOnly'))
      : [...whereTo(lan, isPlain, words), ...howToTrust(lan, words)];
  return `<!doctype html>
<html lang="${escaped(words.say.locale)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title><link rel="stylesheet" href="/phone/style.css"></head>
<body><header>${band}</header><main><h1>${escaped(heading)}</h1>
${[body, back].flat().join('\n')}
</main></body></html>
`;
}

function whereTo(lan: Lan, isPlain: boolean, words: Words): string[] {
  const addresses = lan.addresses.map((one) => `<p class="address">${link(one)}</p>`);
  if (isPlain) return [paragraph(words.sentence('reach.plain')), ...addresses];
  return [
    paragraph(words.sentence('reach.addresses')),
    ...addresses,
    ...(lan.isOpen ? [paragraph(words.sentence('reach.openToAll'))] : []),
    paragraph(words.sentence('reach.pictureFirst')),
    `<img src="/phone/address.svg" alt="${escaped(words.sentence('reach.picture'))}" width="256" height="256">`,
    `<p><code>${escaped(forCamera(lan))}</code></p>`,
  ];
}

/** What a camera is to open: the page that says how to trust Evenfall, or Evenfall where nobody has to. */
export function forCamera({ addresses, explained }: Pick<Lan, 'addresses' | 'explained'>): string {
  return explained ?? addresses[0] ?? '';
}

function howToTrust({ fingerprint, addresses }: Lan, words: Words): string[] {
  if (fingerprint === null) return [];
  const file = `<a href="/authority.crt" download="${escaped(words.sentence('reach.trustFile'))}">${escaped(words.sentence('reach.trustFile'))}</a>`;
  const steps = [
    `${escaped(words.sentence('reach.trustFetch'))} ${file}`,
    `${escaped(words.sentence('reach.trustCheck'))}<br>${escaped(words.sentence('reach.fingerprint'))}:<br><code>${escaped(fingerprint)}</code>`,
    ...(['reach.trustIphone', 'reach.trustAndroid', 'reach.trustComputer'] as const).map((key) =>
      escaped(words.sentence(key)),
    ),
    `${escaped(words.sentence('reach.trustThen'))} ${link(addresses[0] ?? '')}`,
  ];
  return [
    `<h2>${escaped(words.sentence('reach.trustHeading'))}</h2>`,
    paragraph(words.sentence('reach.trustWhy')),
    `<ol>${steps.map((step) => `<li>${step}</li>`).join('')}</ol>`,
    paragraph(words.sentence('reach.trustBounds')),
    paragraph(words.sentence('reach.trustNames')),
  ];
}

function paragraph(text: string): string {
  return `<p>${escaped(text)}</p>`;
}

function link(address: string): string {
  return `<a href="${escaped(address)}">${escaped(address)}</a>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
